using Headroom.Domain.Findings;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Makes one thing of each name, and sees to it that no name stands for two.</summary>
internal static class Named
{
    /// <summary>A map of things of which each may be named by a range.</summary>
    public static MapShape<IReadOnlyList<string>, T> Map<T>(string noun, Shape<T> things, string keyExample) =>
        new(noun, new NamesShape(Words.A(noun)), things) { KeyExample = keyExample };

    /// <summary>The things, one for each name.</summary>
    /// <param name="entries">What was read.</param>
    /// <param name="named">Gives a thing its name and place.</param>
    /// <param name="reader">Takes the finding about a name that stands twice.</param>
    public static IReadOnlyList<T> Each<T>(
        IReadOnlyList<Entry<IReadOnlyList<string>, T>>? entries, Func<T, string, Place, T> named, FieldReader reader)
    {
        var things = new List<T>();
        var places = new Dictionary<string, Place>();
        foreach (var entry in entries ?? [])
        {
            foreach (var name in entry.Key)
            {
                if (First(name, entry.At, places, reader))
                    things.Add(named(entry.Value, name, entry.At));
            }
        }

        return things;
    }

    /// <summary>Notes a name; false, with a finding, when it stands for something already.</summary>
    public static bool First(string name, Place at, Dictionary<string, Place> places, FieldReader reader)
    {
        if (places.TryAdd(name, at))
            return true;
        var before = places[name];
        reader.Refuse(
            Slips.Twice,
            at,
            $"'{name}' a second time (first in {Where(before, at)})",
            "each name once, ranges included",
            "keep one of them, or shorten the range");
        return false;
    }

    // A job and its sheets are several files.
    private static string Where(Place before, Place at) =>
        before.File == at.File ? $"line {before.Line}, column {before.Column}" : before.ToString();
}
