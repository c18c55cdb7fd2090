using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>What a device asks of the network, in the catalogue or of one endpoint.</summary>
internal static class TrafficFields
{
    private static readonly Field<Given<BitsPerSecond>> Stream = new("stream", () => Sensible.DataFlow, "What it sends all the time, such as a camera's pictures, at the highest rate it is set to.", "4 Mb/s");
    private static readonly Field<Given<Share>> CallShare = new("call share", () => Sensible.BelowWhole, "Share of the busy hour that it is on the telephone.", "12 %");
    private static readonly Field<int> Users = new("users", () => new CountShape(0, 10_000), "How many people are on it.", "25");
    private static readonly Field<Given<Share>> Active = new("active", () => Sensible.Share, "Share of its people that load something at one moment.", "10 %");
    private static readonly Field<Given<BitsPerSecond>> Down = new("down", () => Sensible.DataFlow, "What one of those takes.", "8 Mb/s");
    private static readonly Field<Given<BitsPerSecond>> Up = new("up", () => Sensible.DataFlow, "What one of those sends.", "2 Mb/s");

    /// <summary>The figures.</summary>
    public static Field<TrafficFigures> Traffic { get; } = new(
        "traffic",
        () => new ObjectShape<TrafficFigures>("traffic", [Stream, CallShare, Users, Active, Down, Up], Build)
        {
            About = "What a device asks of the network. A part that is left out is nothing; without 'traffic' nothing is known of it.",
        },
        "What it asks of the network.",
        "{users: 25, active: 10 %, down: 8 Mb/s, up: 2 Mb/s}");

    private static readonly Field<Given<BitsPerSecond>> Air = new("air", () => Sensible.DataFlow, "What it carries of data on a clear day, both ways together.", "180 Mb/s");
    private static readonly Field<Given<BitsPerSecond>> Rain = new("rain", () => Sensible.DataFlow, "What is left of that in heavy rain.", "45 Mb/s");

    /// <summary>A link through the air.</summary>
    public static Field<RadioFigures> Radio { get; } = new(
        "radio",
        () => new ObjectShape<RadioFigures>("radio link", [Air, Rain], values => new RadioFigures(values.Get(Air), values.Get(Rain))),
        "What its link through the air carries.",
        "{air: 180 Mb/s, rain: 45 Mb/s}");

    private static TrafficFigures Build(Values values) => new(
        values.Get(Stream), values.Get(CallShare), values.Maybe(Users), values.Get(Active), values.Get(Down), values.Get(Up), values.At);
}
