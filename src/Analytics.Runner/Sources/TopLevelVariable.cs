namespace Analytics.Runner.Sources;

/// <summary>A variable that code declares at its top level with an initial value.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Root">The name its initializer starts with, for example <c>a</c> in <c>a.B&lt;int&gt;(1).C() with { D = 2 }</c>; empty when it starts with something else.</param>
/// <param name="Members">The members that follow it, without type arguments, for example <c>B</c> and <c>C</c>.</param>
/// <param name="IsChangedCopy">Whether a <c>with</c> follows.</param>
/// <param name="Line">Line of the name in the code, from 1.</param>
public sealed record TopLevelVariable(string Name, string Root, IReadOnlyList<string> Members, bool IsChangedCopy, int Line);
