using Headroom.Documents.Drawings;
using Headroom.Documents.Layout;

namespace Headroom.Documents.Papers;

/// <summary>Papers that are drawings.</summary>
internal static class DrawingPapers
{
    private const double Between = 14;

    /// <summary>The racks.</summary>
    public static IReadOnlyList<Block>? Racks(PaperInput input) => Of(input, "rack");

    /// <summary>The faces of the switches.</summary>
    public static IReadOnlyList<Block>? Faces(PaperInput input) => Of(input, "face");

    /// <summary>The rooms with their sound maps.</summary>
    public static IReadOnlyList<Block>? Rooms(PaperInput input) => Of(input, "room");

    /// <summary>The way of the watts.</summary>
    public static IReadOnlyList<Block>? OneLine(PaperInput input) => Of(input, "one-line");

    /// <summary>What holds through an outage, and what happens when it ends.</summary>
    public static IReadOnlyList<Block>? Outage(PaperInput input) => Of(input, "discharge", "restart");

    /// <summary>The uplinks.</summary>
    public static IReadOnlyList<Block>? Uplinks(PaperInput input) => Of(input, "uplinks");

    /// <summary>Fans on the path of their air, and cupboards that warm up.</summary>
    public static IReadOnlyList<Block>? Air(PaperInput input) => Of(input, "fan", "warming");

    private static List<Block>? Of(PaperInput input, params string[] kinds)
    {
        var blocks = new List<Block>();
        foreach (var picture in kinds.SelectMany(kind => DrawingList.Find(kind)!.All(input)))
        {
            if (blocks.Count > 0)
                blocks.Add(new Gap(Between));
            blocks.Add(new Drawn(picture));
        }

        return blocks.Count > 0 ? blocks : null;
    }
}
