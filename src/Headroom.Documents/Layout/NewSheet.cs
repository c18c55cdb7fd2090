namespace Headroom.Documents.Layout;

/// <summary>What follows begins on a sheet of its own.</summary>
public sealed record NewSheet : Block;
