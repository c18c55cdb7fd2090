using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>Words that drawings share.</summary>
internal static class Counted
{
    /// <summary>A count with its noun.</summary>
    /// <param name="count">The count.</param>
    /// <param name="one">The noun of one.</param>
    /// <param name="several">The noun of several.</param>
    public static string Of(int count, string one, string several) => count == 1 ? $"1 {one}" : $"{Numbers.Show(count)} {several}";
}
