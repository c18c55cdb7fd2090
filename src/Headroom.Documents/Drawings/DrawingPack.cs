using System.Text;
using Headroom.Documents.Canvas;
using Headroom.Documents.Papers;

namespace Headroom.Documents.Drawings;

/// <summary>Writes drawings as SVG, a file each.</summary>
public static class DrawingPack
{
    private const int MostName = 60;

    /// <summary>Writes drawings of a studied design.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="kinds">The kinds wanted.</param>
    /// <returns>The drawings, and what could not be drawn, with the reason.</returns>
    public static WrittenPapers Write(PaperInput input, IReadOnlyList<DrawingKind> kinds)
    {
        var written = new List<WrittenPaper>();
        var missing = new List<MissingPaper>();
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var kind in kinds)
        {
            var subjects = kind.Subjects(input);
            var open = new List<string>();
            foreach (var subject in subjects)
            {
                if (kind.Draw(input, subject) is { } picture)
                    written.Add(new($"{NameOf(kind.Id, subject, names)}.svg", Encoding.UTF8.GetBytes(SvgCanvas.WriteFile(picture) + "\n"), 0));
                else
                    open.Add(subject);
            }

            if (subjects.Count == 0 || open.Count > 0)
                missing.Add(new(open.Any(subject => subject.Length > 0) ? $"{kind.Id} of {Written.List(open)}" : kind.Id, kind.Without));
        }

        return new(written, missing);
    }

    // Letters, digits and signs that every disk takes; two that come to the same are told apart by a number.
    private static string NameOf(string kind, string subject, HashSet<string> names)
    {
        var plain = string.Concat(subject.EnumerateRunes().Select(rune => Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '_' or '.' ? rune.ToString() : "-"));
        while (plain.Length > MostName)
            plain = plain[..^(char.IsLowSurrogate(plain[^1]) ? 2 : 1)];
        var name = plain.Length == 0 ? kind : $"{kind}-{plain}";
        var free = name;
        for (var i = 2; !names.Add(free); i++)
            free = $"{name}-{i}";
        return free;
    }
}
