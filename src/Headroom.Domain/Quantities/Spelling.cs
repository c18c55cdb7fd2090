namespace Headroom.Domain.Quantities;

/// <summary>Finds the word somebody probably meant.</summary>
public static class Spelling
{
    /// <summary>The nearest of the known words, when it is near enough to be worth asking about.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The words that would have been right.</param>
    /// <returns>The nearest word, or null when none is near; the first of those equally near.</returns>
    public static string? Nearest(string word, IEnumerable<string> known)
    {
        string? best = null;
        var least = Math.Max(1, word.Length / 3) + 1;
        foreach (var candidate in known)
        {
            var distance = Distance(word, candidate, least);
            if (distance >= least)
                continue;
            least = distance;
            best = candidate;
        }

        return best;
    }

    // Edit distance with neighbouring letters swapped counted once (optimal string alignment), case ignored.
    private static int Distance(string left, string right, int enough)
    {
        if (left.Length > 64 || right.Length > 64 || Math.Abs(left.Length - right.Length) >= enough)
            return enough;
        var rows = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
            rows[i, 0] = i;
        for (var j = 0; j <= right.Length; j++)
            rows[0, j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            for (var j = 1; j <= right.Length; j++)
                rows[i, j] = Cell(rows, left, right, (i, j));
        }

        return rows[left.Length, right.Length];
    }

    private static int Cell(int[,] rows, string left, string right, (int I, int J) at)
    {
        var (i, j) = at;
        var change = Same(left[i - 1], right[j - 1]) ? 0 : 1;
        var best = Math.Min(Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1, rows[i - 1, j - 1] + change);
        return i > 1 && j > 1 && Same(left[i - 1], right[j - 2]) && Same(left[i - 2], right[j - 1])
            ? Math.Min(best, rows[i - 2, j - 2] + 1)
            : best;
    }

    private static bool Same(char left, char right) => char.ToLowerInvariant(left) == char.ToLowerInvariant(right);
}
