using Headroom.Documents.Drawings.Outages;
using Headroom.Documents.Drawings.Ports;
using Headroom.Documents.Drawings.Power;
using Headroom.Documents.Drawings.Racks;
using Headroom.Documents.Drawings.Rooms;

namespace Headroom.Documents.Drawings;

/// <summary>All kinds of drawings there are.</summary>
public static class DrawingList
{
    /// <summary>The kinds.</summary>
    public static IReadOnlyList<DrawingKind> All { get; } =
    [
        new("rack", "a rack from its front and its side, to scale", RackElevation.Racks, RackElevation.Of),
        new("face", "the face of a switch with what is on every port", input => [.. input.Results.Bound.Switches.Select(one => one.Id)], SwitchFace.Of),
        new("room", "the plan of a room to scale, with lines of the same sound level", RoomPlan.Rooms, RoomPlan.Of),
        new("restart", "the mains coming back: who is up when, and what the ports take", _ => [""], (input, _) => RestartDrawing.Of(input)),
        new("discharge", "how long a standby supply holds", DischargeDrawing.Supplies, DischargeDrawing.Of),
        new("one-line", "from the mains over a switch to every device, with watts and volts", OneLine.Switches, OneLine.Of),
    ];

    /// <summary>The kind of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public static DrawingKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
