namespace Analytics.Runner.Proofs;

/// <summary>What a piece of HTML is.</summary>
internal enum HtmlTokenKind
{
    Text,
    Open,
    Close,
}

/// <summary>A piece of HTML: a tag, or the text between two.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Lower-case name of the element; empty for text.</param>
/// <param name="Text">The text as written, entities and all; of a tag its attributes.</param>
internal readonly record struct HtmlToken(HtmlTokenKind Kind, string Name, string Text)
{
    public bool Opens(string name) => Kind == HtmlTokenKind.Open && Name == name;

    public bool Closes(string name) => Kind == HtmlTokenKind.Close && Name == name;
}
