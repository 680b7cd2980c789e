namespace Analytics.Season.Tests.Shelf;

/// <summary>Tests that look at what the shelf keeps; they run while no other test does.</summary>
[CollectionDefinition(nameof(SeasonShelf), DisableParallelization = true)]
public sealed class ShelfAlone;
