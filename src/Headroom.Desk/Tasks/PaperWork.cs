using System.Text.Json;
using Headroom.Desk.Work;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Store;

namespace Headroom.Desk.Tasks;

/// <summary>Makes papers and keeps them as they are.</summary>
internal sealed class PaperWork(JobStore store, JobShelf shelf) : IDeskWork
{
    public string Kind => "papers";

    public byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at)
    {
        var studied = shelf.Study(open, asked.Design) ?? throw new InvalidOperationException("the job has no such design");
        var kinds = PaperList.All.Where(kind => asked.Words.Contains(kind.Id)).ToList();
        var size = SheetSize.All.FirstOrDefault(one => one.Name == studied.Job.Client?.Paper) ?? SheetSize.A4;
        var papers = new List<NewPaper>();
        var said = new List<string>();
        foreach (var (kind, index) in kinds.Select((kind, index) => (kind, index)))
        {
            at.Stop.ThrowIfCancellationRequested();
            at.Tell($"{index} of {kinds.Count} papers; now: {kind.Title}");
            var written = studied.Ask(one => PaperPack.Write(one.Input, [kind], size));
            papers.AddRange(written.Papers.Select(paper => new NewPaper(studied.Id, paper.Name, kind.Title, paper.Bytes)));
            said.AddRange(written.Missing.Select(missing => $"{kind.Title} was not made: {missing.Why}."));
        }

        // All together, so that no half of a pack is ever kept.
        store.Issue(open.Stored.Id, open.Number, papers, at.By);
        return JsonSerializer.SerializeToUtf8Bytes(said);
    }
}
