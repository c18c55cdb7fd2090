namespace Headroom.Documents.Layout;

/// <summary>Something that stands on a paper, under the one before.</summary>
public abstract record Block;
