using Headroom.Documents.Drawings.Rooms;
using Headroom.Engineering.Acoustics;

namespace Headroom.Documents.Tests.Drawings;

public sealed class ContourTests
{
    // A field that falls with the distance from a spot: its lines are circles.
    private const double MiddleX = 2.03;
    private const double MiddleY = 1.57;

    private static readonly SoundGrid Cone = Field(80, 60, (x, y) => 60 - 10 * Math.Sqrt(Math.Pow(x - MiddleX, 2) + Math.Pow(y - MiddleY, 2)));

    [Theory]
    [InlineData(55, 0.5)]
    [InlineData(50, 1.0)]
    [InlineData(46, 1.4)]
    public void The_line_of_a_level_that_falls_with_distance_is_a_circle(double level, double radius)
    {
        var line = Assert.Single(Contours.Of(Cone, level));
        Assert.True(line.Closed);
        Assert.All(Enumerable.Range(0, line.X.Length), i => Assert.Equal(radius, Math.Sqrt(Math.Pow(line.X[i] - MiddleX, 2) + Math.Pow(line.Y[i] - MiddleY, 2)), 0.005));
        var length = Enumerable.Range(1, line.X.Length - 1).Sum(i => Math.Sqrt(Math.Pow(line.X[i] - line.X[i - 1], 2) + Math.Pow(line.Y[i] - line.Y[i - 1], 2)));
        Assert.Equal(2 * Math.PI * radius, length, 0.02 * 2 * Math.PI * radius);
    }

    [Fact]
    public void Two_sources_have_two_lines_and_further_off_one()
    {
        var two = Field(80, 60, (x, y) => Math.Max(60 - 10 * Math.Abs(x - 1.2) - 10 * Math.Abs(y - 1.5), 60 - 10 * Math.Abs(x - 2.8) - 10 * Math.Abs(y - 1.5)));
        Assert.Equal(2, Contours.Of(two, 55).Count);
        Assert.Single(Contours.Of(two, 51));
    }

    [Fact]
    public void A_line_that_leaves_the_mesh_is_open_and_ends_at_its_edge()
    {
        var slope = Field(40, 30, (x, _) => 30 + 5 * x);
        var line = Assert.Single(Contours.Of(slope, 40));
        Assert.False(line.Closed);
        Assert.All(line.X, x => Assert.Equal(2.0, x, 1e-9));
        Assert.Equal(slope.StepY / 2, Math.Min(line.Y[0], line.Y[^1]), 1e-9);
    }

    // Between neighbours of the mesh the level is taken as straight: along a line it must come out as its own.
    [Fact]
    public void Every_point_of_a_line_has_its_level_between_the_points_of_the_mesh()
    {
        var input = DrawingInputs.Of("two-desks");
        var grid = RoomPlan.Grid(input, input.Job.Survey.Spaces[0])!;
        var levels = Contours.Levels(grid);
        Assert.InRange(levels.Count, 2, 7);
        foreach (var line in levels.SelectMany(level => Contours.Of(grid, level)))
            Assert.All(Enumerable.Range(0, line.X.Length), i => Assert.Equal(line.Level, Between(grid, line.X[i], line.Y[i]), 1e-6));
    }

    [Fact]
    public void A_level_that_is_the_same_everywhere_has_no_lines()
    {
        Assert.Empty(Contours.Levels(Field(10, 10, (_, _) => 41.2)));
        Assert.Empty(Contours.Levels(Field(10, 10, (_, _) => 41)));
        Assert.Empty(Contours.Of(Field(10, 10, (_, _) => 41.2), 41));
    }

    private static SoundGrid Field(int columns, int rows, Func<double, double, double> level)
    {
        var grid = new SoundGrid("field", 1.2, columns, rows, 4.0 / columns, 3.0 / rows, new double[columns * rows]);
        for (var i = 0; i < grid.Levels.Length; i++)
            grid.Levels[i] = level((i % columns + 0.5) * grid.StepX, (i / columns + 0.5) * grid.StepY);
        return grid;
    }

    // Straight in both directions between the four neighbours; a point of a line lies on a side of its cell.
    private static double Between(SoundGrid grid, double x, double y)
    {
        var (across, down) = (x / grid.StepX - 0.5, y / grid.StepY - 0.5);
        var (column, row) = (Math.Min((int)Math.Floor(across + 1e-9), grid.Columns - 2), Math.Min((int)Math.Floor(down + 1e-9), grid.Rows - 2));
        var (right, below) = (across - column, down - row);
        return (grid.At(column, row) * (1 - right) + grid.At(column + 1, row) * right) * (1 - below)
            + (grid.At(column, row + 1) * (1 - right) + grid.At(column + 1, row + 1) * right) * below;
    }
}
