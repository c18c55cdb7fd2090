using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Tells how long the disks of a recorder keep pictures.</summary>
internal sealed class RecorderStory(RecorderTraffic recorder, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var own = recorder.Recorder;
        var inputs = new List<WorkingInput>();
        foreach (var group in recorder.Records.GroupBy(one => TrafficStudy.FiguresOf(one)?.Stream?.Value.Value))
        {
            var stream = TrafficStudy.FiguresOf(group.First())?.Stream;
            inputs.Add(new($"rate of {Words.List([.. group.Select(one => one.Id)])}, each", group.Key / 1e6, "Mb/s", Origins.Of(stream)));
        }

        inputs.Add(new("disks", own.Disks, "", own.Disks is null ? "not known" : Origins.Of(Domain.Quantities.Origin.Unstated, own.At)));
        inputs.Add(new("of them for parity", own.Parity ?? 0, "", own.Parity is null ? "not written: none taken" : Origins.Of(Domain.Quantities.Origin.Unstated, own.At)));
        inputs.Add(new("a disk holds", own.DiskSize?.Value.Value / Recording.Terabyte, "TB", Origins.Of(own.DiskSize)));
        inputs.Add(new("kept free", 100 * recorder.Free, "%", own.Free is null ? "not written: common practice, no source" : Origins.Of(own.Free)));
        inputs.Add(new("written of the time", 100 * recorder.Written, "%", own.Written is null ? "not written: all of it" : Origins.Of(own.Written)));
        inputs.Add(new("wanted", entry.Demand, "d", Origins.Of(own.Keep)));
        inputs.Add(ReserveInput(entry));
        return new Working(
            "days = (disks − parity) · size · (1 − free) / (rate · 86 400 / 8 · written)", inputs, Steps(),
            "sums without a source; TB is 10¹², TiB 2⁴⁰ octets (IEC 80000-13): programs that show TiB show less");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry is not { Demand: { } wanted, Limit: { } days } || recorder.UsableOctets is not { } usable)
            return [];
        var rate = recorder.BitsPerSecond / 1e6;
        var kept = LimitKeeping(wanted);
        var octets = Recording.OctetsADay(recorder.BitsPerSecond, recorder.Written);
        return
        [
            new("rate of all pictures together", "Mb/s", rate, rate * days / wanted, rate * days / kept),
            new("room for pictures", "TB", usable / Recording.Terabyte, wanted * octets / Recording.Terabyte, kept * octets / Recording.Terabyte, UpTo: false),
        ];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{entry.Subject} keeps {Words.Of(Math.Round(entry.Limit ?? 0, 1))} days of pictures; {Words.Of(entry.Demand ?? 0)} are wanted.";

    private List<WorkingStep> Steps()
    {
        var steps = new List<WorkingStep>();
        if (recorder.BitsPerSecond > 0)
        {
            var day = Recording.OctetsADay(recorder.BitsPerSecond, recorder.Written);
            steps.Add(new("written in a day", $"{Words.Of(recorder.BitsPerSecond / 1e6)} Mb/s · 86 400 s / 8 · {Words.Of(100 * recorder.Written)} %", day / Recording.Terabyte, "TB"));
        }

        if (recorder.UsableOctets is { } usable)
        {
            steps.Add(new("room for pictures", $"{recorder.Recorder.Disks - (recorder.Recorder.Parity ?? 0)} disks less {Words.Of(100 * recorder.Free)} %", usable / Recording.Terabyte, "TB"));
            steps.Add(new("the same as programs count", "÷ 1.0995", usable / Recording.Tebibyte, "TiB"));
        }

        steps.Add(new("days kept", "the quotient", recorder.Days, "d"));
        return steps;
    }
}
