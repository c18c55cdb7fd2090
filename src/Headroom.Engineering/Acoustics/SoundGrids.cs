using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Works out levels on a mesh over a room.</summary>
public static class SoundGrids
{
    /// <summary>The mesh over a room, in its loudest ordinary case.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="space">The room.</param>
    /// <param name="mesh">How many points along and across the room; 1 or more each.</param>
    /// <param name="height">Height of the mesh above the floor [m]; 0 or more.</param>
    /// <returns>The levels, background included where it is known; null when the room or its size is not known, or nothing of what is heard there.</returns>
    /// <remarks>Source: the same sums as at an ear, <see cref="RoomAcoustics.LevelLessPower"/> for each source and octave.</remarks>
    public static SoundGrid? Of(AcousticResult result, string space, (int Columns, int Rows) mesh, double height)
    {
        Require.Between(1, 2000, mesh.Columns);
        Require.Between(1, 2000, mesh.Rows);
        Require.AtLeast(0, height, "m");
        var job = result.Bound.Job;
        var rooms = new SoundRooms(job);
        if (rooms.Space(space) is not { Size.Value: var size } room)
            return null;
        var middle = new Given<Spot>(new(size.Length / 2, size.Width / 2, height), "the middle", Origin.Assumed, null, Place.None);
        var ear = new Listener("mesh", space, middle, null, null, Place.None);
        var finder = new PathFinder(job, result.Bound.Catalogue, rooms);
        var paths = result.Sources.Select(source => finder.Of(source, ear)).Where(path => path.Known).ToList();
        var loud = new EarCases(new SourceBook(job, result.Sources, rooms), rooms, result.Inlets).Ordinary(paths).FirstOrDefault()?.Loud ?? [];
        if (loud.Count == 0 && room.Background is null)
            return null;
        var screens = job.Survey.Screens.Where(screen => screen.In == space).ToArray();
        var floor = room.Background is { } background ? Levels.Energy(background.Value.Value) : 0;
        var grid = new SoundGrid(space, height, mesh.Columns, mesh.Rows, size.Length / mesh.Columns, size.Width / mesh.Rows, new double[mesh.Columns * mesh.Rows]);
        Fill(grid, [.. loud.Select(one => new MeshSource(one, screens))], floor);
        return grid;
    }

    private static void Fill(SoundGrid grid, MeshSource[] sources, double floor)
    {
        foreach (var source in sources)
            floor += source.Returned;
        for (var row = 0; row < grid.Rows; row++)
        {
            for (var column = 0; column < grid.Columns; column++)
            {
                var spot = grid.SpotAt(column, row);
                var energy = floor;
                foreach (var source in sources)
                    energy += source.Direct(spot);
                grid.Levels[row * grid.Columns + column] = 10 * Math.Log10(energy);
            }
        }
    }
}
