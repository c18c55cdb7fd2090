using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Entries of recorders: the days wanted against the days the disks hold.</summary>
internal static class RecorderEntries
{
    private static readonly string[] NoParity = ["parity not written: none taken, one broken disk loses its pictures"];
    private static readonly string[] NoFree = ["space kept free not written: a tenth taken"];
    private static readonly string[] Neither = [NoParity[0], NoFree[0]];
    private static readonly string[] Longer = ["set lower picture rates, or write only what moves", "put in larger disks, or one more"];

    /// <summary>Adds the entry of one recorder.</summary>
    public static void Add(List<LedgerEntry> entries, RecorderTraffic recorder, Policy policy)
    {
        var reserve = policy.ReserveOf("recording");
        var wanted = recorder.Recorder.Keep?.Value.Value / 86_400;
        var entry = new EntryDraft(TrafficLedger.Discipline, recorder.Endpoint.Id, "days", "days of pictures", "d", "recording") { Sense = Sense.AtLeast }
            .With(wanted, recorder.Days, reserve, new RecorderStory(recorder, reserve));
        entries.Add(entry with
        {
            Question = entry.Studied == Verdict.Unknown ? Question(recorder) : null,
            Assumed = (recorder.Recorder.Parity, recorder.Recorder.Free) switch { (null, null) => Neither, (null, _) => NoParity, (_, null) => NoFree, _ => [] },
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? Longer : [],
        });
    }

    private static string Question(RecorderTraffic recorder)
    {
        var unknown = recorder.NotKnown;
        return recorder.Recorder.Disks is null || recorder.Recorder.DiskSize is null ? "how many disks of which size does it have? its trays say"
            : unknown.Count > 0 ? $"at which highest rate do {Words.List([.. unknown.Select(one => one.Id)])} send? their settings say"
            : recorder.BitsPerSecond == 0 ? "whose pictures does it keep? write 'records'"
            : "how long are pictures to be kept? ask the client";
    }
}
