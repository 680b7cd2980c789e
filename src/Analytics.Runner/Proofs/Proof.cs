namespace Analytics.Runner.Proofs;

/// <summary>What a report says about itself as data: what it was made from, digests of its parts, and every value it shows.</summary>
public sealed record Proof
{
    /// <summary>The shape of the data; another number means another version of this program.</summary>
    public const int Format = 1;

    /// <summary>File name of the notebook.</summary>
    public required string Notebook { get; init; }

    /// <summary>SHA-256 of the notebook file as it was run, lower-case hex.</summary>
    public required string NotebookSha256 { get; init; }

    /// <summary>Name and version of the library.</summary>
    public required string Library { get; init; }

    /// <summary>How the run ended, in a word or two.</summary>
    public required string Ending { get; init; }

    /// <summary>Every setting, as readers may see it.</summary>
    public required IReadOnlyList<ProofSetting> Settings { get; init; }

    /// <summary>The files the results come from.</summary>
    public required IReadOnlyList<ProofInput> Inputs { get; init; }

    /// <summary>The files whose code was put into the notebook.</summary>
    public IReadOnlyList<ProofInput> With { get; init; } = [];

    /// <summary>The parts of the page, in order; together they are the whole page but for the time it was made and this data.</summary>
    public required IReadOnlyList<ProofPart> Parts { get; init; }

    /// <summary>What each part of the page that shows results tells, by the name of the part, in order.</summary>
    public required IReadOnlyList<KeyValuePair<string, IReadOnlyList<PageItem>>> Values { get; init; }
}

/// <summary>A setting of the run.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Value">Its value as <c>--set</c> takes it; of a path the last name only.</param>
/// <param name="Given">Whether it was given for this run; else it is the notebook's own.</param>
/// <param name="IsPath">Whether it is a path, of which a report tells the last name only.</param>
public sealed record ProofSetting(string Name, string Value, bool Given, bool IsPath);

/// <summary>A file that was read.</summary>
/// <param name="File">Its path as the report gives it, inside the folder of inputs.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hex; empty when it could not be read.</param>
public sealed record ProofInput(string File, string Sha256)
{
    /// <summary>Head of the column of digests: a table that has one lists the files behind the results.</summary>
    public const string DigestHead = "SHA-256";
}

/// <summary>A part of the page.</summary>
/// <param name="Name">Its name, for example <c>part-5</c>.</param>
/// <param name="Length">Its length in characters of the text, line ends counted as one.</param>
/// <param name="Sha256">SHA-256 of its text in UTF-8, lower-case hex.</param>
public sealed record ProofPart(string Name, int Length, string Sha256);
