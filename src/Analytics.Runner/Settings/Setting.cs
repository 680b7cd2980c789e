namespace Analytics.Runner.Settings;

/// <summary>One setting a notebook declares in its settings cell.</summary>
/// <param name="Name">Name of the variable.</param>
/// <param name="Type">Declared type.</param>
/// <param name="Literal">Its value as written, for example <c>"../data-demo"</c> or <c>0.95</c>.</param>
/// <param name="Comment">The comment on its line: unit and choices.</param>
public sealed record Setting(string Name, SettingType Type, string Literal, string Comment)
{
    /// <summary>The setting as it would be declared.</summary>
    public override string ToString() => $"{Type.CodeName} {Name} = {Literal};";
}
