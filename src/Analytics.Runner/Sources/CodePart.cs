namespace Analytics.Runner.Sources;

/// <summary>A piece of code with the place it is from.</summary>
/// <param name="Place">What messages call it: the file, of a notebook with its cell, for example <c>ideas.csx</c> or <c>bench.ipynb, cell 3</c>. Lines count from its first.</param>
/// <param name="Code">The code, with line feeds.</param>
public sealed record CodePart(string Place, string Code);
