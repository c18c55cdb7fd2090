using Headroom.Domain.Quantities;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>How long disks keep pictures.</summary>
internal static class RecorderDays
{
    private static readonly NumberInput Cameras = new("cameras", "cameras", new(1, 1000));
    private static readonly QuantityInput Rate = new("rate", "highest rate one is set to", BitsPerSecond.Units, new(0.05, 100, "Mb/s"));
    private static readonly NumberInput Disks = new("disks", "disks", new(1, 100)) { Default = "1", DefaultWhy = "one disk" };
    private static readonly QuantityInput Size = new("size", "what a disk holds", Octets.Units, new(0.01, 1000, "TB"));
    private static readonly NumberInput Parity = new("parity", "disks that only guard against the loss of others", new(0, 4)) { Default = "0", DefaultWhy = "no guard against a broken disk" };
    private static readonly QuantityInput Free = new("free", "share kept free", Share.Units, new(0, 60, "%")) { Default = "10 %", DefaultWhy = "common practice, no source" };
    private static readonly QuantityInput Written = new("written", "share of the time in which pictures are written", Share.Units, new(1, 100, "%")) { Default = "100 %", DefaultWhy = "all the time" };

    private static readonly SumOutput Days = new("days", "d", "days kept");
    private static readonly SumOutput Day = new("day", "GB", "written in a day");
    private static readonly SumOutput Room = new("room", "TB", "room for pictures");
    private static readonly SumOutput RoomBinary = new("room-binary", "TiB", "the same as programs count");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "recorder-days",
        Discipline = TrafficSums.Discipline,
        Answers = "how many days of pictures do the disks keep?",
        Inputs = [Cameras, Rate, Disks, Size, Parity, Free, Written],
        Outputs = [Days, Day, Room, RoomBinary],
        Formula = "days = (disks − parity) · size · (1 − free) / (cameras · rate · 86 400 / 8 · written)",
        Source = "sums without a source; TB is 10¹², TiB 2⁴⁰ octets (IEC 80000-13)",
        Example = "cameras 16 rate 4 Mb/s size 8 TB",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (disks, parity) = ((int)given[Disks], (int)given[Parity]);
        var day = Recording.OctetsADay(given[Cameras] * given[Rate], given[Written]);
        if (parity >= disks)
        {
            return new SumAnswer($"No day is kept: {disks} of {disks} disks guard against the loss of others, and none is left for pictures.", [Days.Is(null)], []) { Holds = false };
        }

        var room = Recording.UsableOctets(disks, parity, given[Size], given[Free]);
        return new SumAnswer(
            $"{new Told(Recording.Days(room, day), "d")} are kept; {new Told(day / 1e9, "GB")} are written in a day.",
            [Days.Is(Recording.Days(room, day)), Day.Is(day / 1e9), Room.Is(room / Recording.Terabyte), RoomBinary.Is(room / Recording.Tebibyte)],
            [
                new("written in a day", $"{Words.Of(given[Cameras])} · {Words.Of(given[Rate] / 1e6)} Mb/s · 86 400 s / 8 · {Words.Of(100 * given[Written])} %", day / 1e9, "GB"),
                new("room", $"{disks - parity} · {Words.Of(given[Size] / Recording.Terabyte)} TB less {Words.Of(100 * given[Free])} %", room / Recording.Terabyte, "TB"),
                new("days", "the quotient", Recording.Days(room, day), "d"),
            ]);
    }
}
