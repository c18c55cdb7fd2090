using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Editing;

/// <summary>What a design changes of the building, each on one line.</summary>
internal static class ChangeText
{
    /// <summary>A drop.</summary>
    public static string Of(DropChange change) => new FlowText().Add("cable", change.Cable)
        .Raw("pieces", change.Pieces is { } pieces ? $"[{string.Join(", ", pieces.Select(Piece))}]" : null)
        .Raw("panel cord", Cord(change.CordAtPanel)).Raw("device cord", Cord(change.CordAtDevice)).Add("mated pairs", change.MatedPairs).ToString();

    /// <summary>A pathway.</summary>
    public static string Of(PathwayChange change) => new FlowText().Add("inside", change.Inside).Add("area", change.Area).Add("barrier", change.Barrier)
        .Add("apart", change.Apart).Add("ambient", change.Ambient).ToString();

    /// <summary>A space.</summary>
    public static string Of(SpaceChange change) =>
        new FlowText().Add("vents", change.Vents).Add("vents apart", change.VentsApart).Add("reduction", change.Reduction).ToString();

    /// <summary>A partition.</summary>
    public static string Of(PartitionChange change) => new FlowText().Add("door reduction", change.DoorReduction).Add("gap", change.Gap).ToString();

    /// <summary>A rack.</summary>
    public static string Of(RackChange change) => new FlowText().Add("cabinet", change.Cabinet).Add("height", change.Height).Add("depth", change.Depth)
        .Add("load", change.Load).Add("blanked", change.Blanked).ToString();

    /// <summary>A line.</summary>
    public static string Of(LineChange change) => new FlowText().Add("down", change.Down).Add("up", change.Up).ToString();

    /// <summary>An endpoint.</summary>
    public static string Of(EndpointChange change) => new FlowText().Add("model", change.Model).Raw("traffic", change.Traffic is { } traffic ? Traffic(traffic) : null).ToString();

    private static string Traffic(TrafficFigures traffic) => new FlowText().Add("stream", traffic.Stream).Add("call share", traffic.CallShare).Add("users", traffic.Users)
        .Add("active", traffic.ActiveShare).Add("down", traffic.Down).Add("up", traffic.Up).ToString();

    private static string? Cord(RunPiece? cord) => cord is null ? null : Piece(cord);

    private static string Piece(RunPiece piece) => new FlowText().Add("length", piece.Length).Add("cable", piece.Cable).Add("ambient", piece.Ambient)
        .Raw("bundle", piece.Bundle?.Written).Add("by", piece.By).ToString();
}
