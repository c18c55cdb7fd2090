using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Makes one cord of each name, ranges going in step.</summary>
internal static class PatchRows
{
    /// <summary>The cords, in the order written; names whose cord is taken away go to the list.</summary>
    public static IReadOnlyList<Patch> Read(
        IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<IReadOnlyList<PortRef>>>> entries, List<string> removed, FieldReader reader)
    {
        var rows = new List<Patch>();
        var places = new Dictionary<string, Place>();
        foreach (var entry in entries)
        {
            var ports = entry.Value.Thing;
            if (ports is not null && ports.Count != entry.Key.Count)
            {
                RefuseSteps(entry.Key, ports, entry.At, reader);
                continue;
            }

            for (var i = 0; i < entry.Key.Count; i++)
            {
                if (!Named.First(entry.Key[i], entry.At, places, reader))
                    continue;
                if (ports is null)
                    removed.Add(entry.Key[i]);
                else
                    rows.Add(new Patch(entry.Key[i], ports[i], entry.At));
            }
        }

        return rows;
    }

    private static void RefuseSteps(IReadOnlyList<string> names, IReadOnlyList<PortRef> ports, Place at, FieldReader reader)
    {
        reader.LeaveOut();
        reader.Refuse(
            JobSlips.OutOfStep,
            at,
            $"{reader.Name} patches {names.Count} ({names[0]} ...) to {ports.Count} ({ports[0]} ...)",
            "as many ports as drops",
            "make the ranges equally long, or write the cords one by one");
    }
}
