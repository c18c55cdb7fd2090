using System.Text.Json;
using Headroom.Desk.Work;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.JobFiles;
using Headroom.Store;

namespace Headroom.Desk.Tasks;

/// <summary>Makes papers and keeps them as they are.</summary>
internal sealed class PaperWork(JobStore store, JobShelf shelf, ModelShelf models) : IDeskWork
{
    public string Kind => "papers";

    public byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at)
    {
        var studied = shelf.Study(open, asked.Design) ?? throw new InvalidOperationException("the job has no such design");
        var kinds = PaperList.All.Where(kind => asked.Words.Contains(kind.Id)).ToList();
        var size = SheetSize.All.FirstOrDefault(one => one.Name == studied.Job.Client?.Paper) ?? SheetSize.A4;
        var firm = models.Now.Firm;
        using var manner = firm?.Manner.Use();
        if (firm is not null && FirmFile.OtherCurrency(firm, studied.Ask(one => one.Input.Results.Money?.Currency)) is { } clash)
            return JsonSerializer.SerializeToUtf8Bytes<List<string>>([$"No paper was made: {clash.Given}; {clash.Allowed}; {clash.Advice}."]);
        var papers = new List<NewPaper>();
        var said = new List<string>();
        foreach (var (kind, index) in kinds.Select((kind, index) => (kind, index)))
        {
            at.Stop.ThrowIfCancellationRequested();
            at.Tell($"{index} of {kinds.Count} papers; now: {kind.Title}");
            var written = studied.Ask(one => PaperPack.Write(one.Input with { Firm = firm, Units = new(firm?.Imperial ?? false) }, [kind], size));
            papers.AddRange(written.Papers.Select(paper => new NewPaper(studied.Id, paper.Name, kind.Title, paper.Bytes)));
            said.AddRange(written.Missing.Select(missing => $"{kind.Title} was not made: {missing.Why}."));
        }

        // All together, so that no half of a pack is ever kept.
        store.Issue(open.Stored.Id, open.Number, papers, at.By);
        return JsonSerializer.SerializeToUtf8Bytes(said);
    }
}
