namespace Headroom.Cli.Models;

/// <summary>A model as shown: its values as they were written, in the order in which people ask for them.</summary>
/// <param name="Kind">The kind, as catalogue files name it.</param>
/// <param name="Id">Its name.</param>
/// <param name="About">One line about it; empty when none was written.</param>
/// <param name="From">The place it was read from.</param>
/// <param name="Rows">What is known: a label and what was written.</param>
internal sealed record ModelSheet(string Kind, string Id, string About, string From, IReadOnlyList<(string Label, string Text)> Rows)
{
    /// <summary>Whether a text stands anywhere in it, in large or small letters.</summary>
    public bool Holds(string text) =>
        Rows.Select(row => $"{row.Label} {row.Text}").Append(Id).Append(About).Any(part => part.Contains(text, StringComparison.OrdinalIgnoreCase));
}
