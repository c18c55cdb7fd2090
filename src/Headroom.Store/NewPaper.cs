namespace Headroom.Store;

/// <summary>A paper to be kept.</summary>
/// <param name="Design">The design it is of.</param>
/// <param name="Name">The name of its file.</param>
/// <param name="Title">Its title.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record NewPaper(string Design, string Name, string Title, ReadOnlyMemory<byte> Bytes);
