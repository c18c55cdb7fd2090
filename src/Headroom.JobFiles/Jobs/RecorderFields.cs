using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>That an endpoint keeps pictures.</summary>
internal static class RecorderFields
{
    private static readonly Field<int> Disks = new("disks", () => new CountShape(1, 100), "How many disks it has.", "4");
    private static readonly Field<Given<Octets>> DiskSize = new("disk size", () => Sensible.Disk, "What one of them holds.", "8 TB");
    private static readonly Field<int> Parity = new("parity", () => new CountShape(0, 10), "How many of them only guard against the loss of others.", "1");
    private static readonly Field<Given<Share>> Free = new("free", () => Sensible.BelowWhole, "Share that is kept free; a tenth without it.", "10 %");
    private static readonly Field<Given<Seconds>> Keep = new("keep", () => Sensible.Kept, "How long pictures are to be kept.", "30 d");
    private static readonly Field<Given<Share>> Written = new("written", () => Sensible.Share, "Share of the time in which pictures are written, where only motion is; all of it without it.", "40 %");
    private static readonly Field<IReadOnlyList<IReadOnlyList<string>>> Records = new(
        "records", () => new ListShape<IReadOnlyList<string>>("endpoint", new NamesShape("an endpoint")) { OrOne = true }, "The endpoints whose pictures it keeps; all that send any without it.", "[cam-1..cam-6, door]");

    /// <summary>The recorder.</summary>
    public static Field<Recorder> Recorder { get; } = new(
        "recorder",
        () => new ObjectShape<Recorder>("recorder", [Disks, DiskSize, Parity, Free, Keep, Written, Records], Build) { About = "That an endpoint keeps the pictures of cameras, and on what." },
        "That it keeps pictures, and on what.",
        "{disks: 4, disk size: 8 TB, parity: 1, keep: 30 d}");

    private static Recorder Build(Values values) => new(
        values.Maybe(Disks),
        values.Get(DiskSize),
        values.Maybe(Parity),
        values.Get(Free),
        values.Get(Keep),
        values.Get(Written),
        [.. values.List(Records).SelectMany(names => names)],
        values.At);
}
