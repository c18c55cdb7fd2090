using Headroom.Documents.Drawings.Air;
using Headroom.Documents.Drawings.Choices;
using Headroom.Documents.Drawings.Outages;
using Headroom.Documents.Drawings.Ports;
using Headroom.Documents.Drawings.Power;
using Headroom.Documents.Drawings.Racks;
using Headroom.Documents.Drawings.Rooms;
using Headroom.Documents.Drawings.Traffic;

namespace Headroom.Documents.Drawings;

/// <summary>All kinds of drawings there are.</summary>
public static class DrawingList
{
    /// <summary>The kinds.</summary>
    public static IReadOnlyList<DrawingKind> All { get; } =
    [
        new("rack", "a rack from its front and its side, to scale", RackElevation.Racks, RackElevation.Of) { Without = "nothing stands in a rack" },
        new("face", "the face of a switch with what is on every port", input => [.. input.Results.Bound.Switches.Select(one => one.Id)], SwitchFace.Of) { Without = "the design has no switch" },
        new("room", "the plan of a room to scale, with lines of the same sound level", RoomPlan.Rooms, RoomPlan.Of) { Without = "no room with a size has a listener or equipment at a spot" },
        new("restart", "the mains coming back: who is up when, and what the ports take", _ => [""], (input, _) => RestartDrawing.Of(input)) { Without = "nothing gets power over its cable" },
        new("discharge", "how long a standby supply holds", DischargeDrawing.Supplies, DischargeDrawing.Of) { Without = "battery or load of the standby supply is not known, or there is none" },
        new("one-line", "from the mains over a switch to every device, with watts and volts", OneLine.Switches, OneLine.Of) { Without = "nothing gets power over its cable" },
        new("uplinks", "the tree of uplinks, with what is asked of each over what it carries", _ => [""], (input, _) => UplinkTree.Of(input)) { Without = "no switch has an uplink or a line" },
        new("fan", "a fan's curve, the path of its air, and where they meet", FanDrawing.Switches, FanDrawing.Of) { Without = "the fan or the air it moves is not known" },
        new("warming", "a cupboard warming up, case by case, from the air outside", WarmingDrawing.Places, WarmingDrawing.Of) { Without = "walls, heat or the air around the cupboard are not known, or nothing stands in one" },
        new("front", "designs by cost and by sound at the nearest ear", _ => [""], (input, _) => FrontDrawing.Of(input)) { Without = "no design keeps every reserve", Needs = PlannedFor.Designs },
        new("turning", "rulers of the values at which the cheapest design changes", _ => [""], (input, _) => TurningRuler.Of(input)) { Without = "there is no design today that keeps every reserve", Needs = PlannedFor.Turns },
    ];

    /// <summary>The kind of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public static DrawingKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
