namespace Analytics.Season.Files;

/// <summary>A file of the season in memory.</summary>
/// <param name="Path">Path inside the season folder, forward slashes.</param>
/// <param name="Bytes">Its bytes.</param>
/// <param name="Sha256">SHA-256 of the bytes, lower-case hex.</param>
internal sealed record FileContent(string Path, byte[] Bytes, string Sha256);
