namespace Analytics.Season.Files;

/// <summary>A file that cannot be used as a whole. Caught inside the reader and turned into a held-back entry.</summary>
internal sealed class InputFault(string reason, string remedy, string value = "") : Exception(reason)
{
    public string Reason { get; } = reason;

    public string Remedy { get; } = remedy;

    public string Value { get; } = value;
}
