using Headroom.Engineering.Acoustics;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>Draws lines of the same level through a mesh: marching squares, straight between neighbours.</summary>
public static class Contours
{
    // A point at which nothing is heard takes a level that no line lies near.
    private const double Nothing = -200;
    private const int MostLines = 7;

    private static readonly double[] Steps = [1, 2, 3, 5, 10, 20];

    /// <summary>The round levels between the quietest and the loudest point of a mesh.</summary>
    /// <param name="grid">The mesh.</param>
    /// <returns>The levels [dB(A)]; empty where the level is nearly the same everywhere.</returns>
    public static IReadOnlyList<double> Levels(SoundGrid grid)
    {
        var (least, most) = (grid.Levels.Where(double.IsFinite).DefaultIfEmpty().Min(), grid.Levels.DefaultIfEmpty().Max());
        foreach (var step in Steps)
        {
            var first = Math.Floor(least / step) + 1;
            var last = Math.Ceiling(most / step) - 1;
            if (last - first < MostLines)
                return last < first ? [] : [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i) * step)];
        }

        return [];
    }

    /// <summary>The lines of one level.</summary>
    /// <param name="grid">The mesh.</param>
    /// <param name="level">The level [dB(A)].</param>
    public static IReadOnlyList<Contour> Of(SoundGrid grid, double level)
    {
        var links = new Dictionary<int, List<int>>();
        for (var row = 0; row + 1 < grid.Rows; row++)
        {
            for (var column = 0; column + 1 < grid.Columns; column++)
                Cell(grid, level, (column, row), links);
        }

        var lines = new List<Contour>();
        foreach (var start in links.Keys.Order().OrderBy(edge => links[edge].Count).ToList())
        {
            if (links[start].Count > 0)
                lines.Add(Line(grid, level, Walk(links, start)));
        }

        return lines;
    }

    private static double At(SoundGrid grid, int column, int row) => Math.Max(Nothing, grid.At(column, row));

    // The edges of a cell, going round: 0 towards the next column, 1 the far side of it, 2 back, 3 the near side. What lies above the level stays on one side.
    private static void Cell(SoundGrid grid, double level, (int Column, int Row) cell, Dictionary<int, List<int>> links)
    {
        var (column, row) = cell;
        double[] corners = [At(grid, column, row), At(grid, column + 1, row), At(grid, column + 1, row + 1), At(grid, column, row + 1)];
        int[] edges = [Edge(grid, column, row, false), Edge(grid, column + 1, row, true), Edge(grid, column, row + 1, false), Edge(grid, column, row, true)];
        var crossed = Enumerable.Range(0, 4).Where(side => corners[side] > level != corners[(side + 1) % 4] > level).ToArray();
        if (crossed.Length == 2)
        {
            Join(links, edges[crossed[0]], edges[crossed[1]]);
        }
        else if (crossed.Length == 4)
        {
            // A saddle: its middle tells which corners belong together.
            var turned = corners.Average() > level == corners[0] > level;
            Join(links, edges[0], edges[turned ? 1 : 3]);
            Join(links, edges[2], edges[turned ? 3 : 1]);
        }
    }

    private static int Edge(SoundGrid grid, int column, int row, bool across) => 2 * (row * grid.Columns + column) + (across ? 1 : 0);

    private static void Join(Dictionary<int, List<int>> links, int one, int other)
    {
        foreach (var (from, to) in new[] { (one, other), (other, one) })
        {
            if (!links.TryGetValue(from, out var ends))
                links[from] = ends = [];
            ends.Add(to);
        }
    }

    private static List<int> Walk(Dictionary<int, List<int>> links, int start)
    {
        var way = new List<int> { start };
        for (var at = start; links[at].Count > 0;)
        {
            var next = links[at][0];
            links[at].Remove(next);
            links[next].Remove(at);
            way.Add(next);
            at = next;
        }

        return way;
    }

    private static Contour Line(SoundGrid grid, double level, List<int> way)
    {
        var (x, y) = (new double[way.Count], new double[way.Count]);
        for (var i = 0; i < way.Count; i++)
        {
            var (cell, across) = (way[i] / 2, way[i] % 2 == 1);
            var (column, row) = (cell % grid.Columns, cell / grid.Columns);
            var (here, there) = (At(grid, column, row), across ? At(grid, column, row + 1) : At(grid, column + 1, row));
            var share = (level - here) / (there - here);
            x[i] = (column + 0.5 + (across ? 0 : share)) * grid.StepX;
            y[i] = (row + 0.5 + (across ? share : 0)) * grid.StepY;
        }

        return new Contour(level, x, y, way[0] == way[^1]);
    }
}
