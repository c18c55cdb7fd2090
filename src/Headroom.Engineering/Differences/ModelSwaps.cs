using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Differences;

/// <summary>Puts models in the place of others in a copy of a job.</summary>
public static class ModelSwaps
{
    /// <summary>Makes the copy. Readings are left out: they are of what stood there before.</summary>
    /// <param name="job">The job.</param>
    /// <param name="whole">The design, whole.</param>
    /// <param name="swaps">What is to be swapped, one after the other.</param>
    /// <param name="catalogue">The models there are.</param>
    /// <returns>The copy, whose only design is named after the swaps, or all that is wrong.</returns>
    public static SwappedJob Of(Job job, Design whole, IReadOnlyList<ModelSwap> swaps, Catalogue catalogue)
    {
        var (complaints, survey) = (new List<string>(), new List<DesignDifference>());
        var at = (Design: whole, job.Survey);
        foreach (var swap in swaps)
        {
            if (KindOf(swap, at, catalogue, complaints) is not { } kind)
                continue;
            if (kind.Holders is { } holders)
                survey.Add(new("survey", $"{swap.Other} in place of {swap.Model} at {Words.List([.. holders(at.Survey, swap.Model)])}"));
            at = kind.Put(at, swap);
        }

        if (complaints.Count > 0)
            return new(null, [], complaints);
        var design = at.Design with { Id = $"{whole.Id}, {string.Join(", ", swaps)}" };
        return new(job with { Survey = at.Survey, Designs = [design], Chosen = design.Id, Readings = [] }, survey, []);
    }

    private static SwapKind? KindOf(ModelSwap swap, (Design Design, Survey Survey) at, Catalogue catalogue, List<string> complaints)
    {
        var kind = SwapKind.All.FirstOrDefault(kind => kind.Used(at.Design, at.Survey).Contains(swap.Model));
        if (kind is null)
        {
            var used = SwapKind.All.SelectMany(kind => kind.Used(at.Design, at.Survey)).OfType<string>().Distinct().ToList();
            complaints.Add($"nothing of design {at.Design.Id} is a '{swap.Model}'{Near(swap.Model, used)}; it has {Words.List(used, most: 12)}");
            return null;
        }

        if (kind.Known(catalogue).Contains(swap.Other))
            return kind;
        var other = SwapKind.All.FirstOrDefault(other => other.Known(catalogue).Contains(swap.Other));
        complaints.Add(other is not null
            ? $"{swap.Model} is {kind.Noun} and {swap.Other} {other.Noun}; a swap keeps the kind"
            : $"the catalogue has no model '{swap.Other}' that is {kind.Noun}, as {swap.Model} is{Near(swap.Other, kind.Known(catalogue))}; 'headroom catalogue list' lists all");
        return null;
    }

    private static string Near(string word, IEnumerable<string> known) => Spelling.Nearest(word, known) is { } near ? $"; did you mean {near}?" : "";
}
