using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Drawings.Ports;
using Headroom.Documents.Drawings.Rooms;
using Box = Headroom.Documents.Canvas.Box;

namespace Headroom.Documents.Tests.Drawings;

public sealed class ScaleTests
{
    private const double PointsPerInch = 72;
    private const double MetresPerInch = 0.0254;

    // What one would measure with a ruler on the sheet, times the scale, is the distance that the sums of sound used.
    [Fact]
    public void A_distance_on_the_plan_is_that_of_the_sums_of_sound()
    {
        var input = DrawingInputs.Of("two-desks");
        var frame = RoomFrame.Of(input.Job.Survey.Spaces[0].Size!.Value);
        var checkedPaths = 0;
        foreach (var listener in input.Results.Sound.Listeners)
        {
            foreach (var path in listener.Paths.Where(path => path is { Metres: not null, Spot: not null }))
            {
                var (ear, source) = (listener.Listener.Spot!.Value, path.Spot!.Value);
                var (from, to) = (frame.At(source), frame.At(ear));
                var drawn = Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)) / PointsPerInch * MetresPerInch * frame.Scale.Ratio;
                var up = ear.Z - source.Z;
                Assert.Equal(path.Metres!.Value, Math.Sqrt(drawn * drawn + up * up), path.Metres.Value * 0.01);
                checkedPaths++;
            }
        }

        Assert.Equal(2, checkedPaths);
    }

    [Theory]
    [InlineData(6.4, 4.8, 20)]
    [InlineData(0.9, 0.5, 10)]
    [InlineData(72, 9.6, 500)]
    public void A_room_is_drawn_at_the_largest_scale_of_technical_drawings_that_fits(double length, double width, double least)
    {
        var room = new Box(0, 0, 360, 330);
        var scale = DrawingScale.For(length, width, room);
        Assert.True(scale.Points(length) <= room.Width && scale.Points(width) <= room.Height);
        Assert.True(scale.Ratio >= least);
        Assert.Contains(scale.Ratio, new double[] { 5, 10, 20, 50, 100, 200, 500, 1000, 2000 });
    }

    [Fact]
    public void Nineteen_inches_at_one_to_ten_are_nearly_two_on_the_sheet() => Assert.Equal(19 * PointsPerInch / 10, new DrawingScale(10).Points(19 * MetresPerInch), 1e-9);

    [Theory]
    [InlineData("barn-vets")]
    [InlineData("school-wings")]
    public void Every_used_port_stands_exactly_once_on_the_face(string job)
    {
        var input = DrawingInputs.Of(job);
        foreach (var unit in input.Results.Bound.Switches)
        {
            var ports = FacePorts.Of(input, unit);
            Assert.Equal(ports.Count, ports.Select(port => port.Number).Distinct().Count());
            var texts = Recorder.Of(SwitchFace.Of(input, unit.Id)!).Texts.Select(text => text.Text).ToList();
            foreach (var endpoint in input.Results.Bound.Endpoints.Where(one => one.Port?.Switch?.Id == unit.Id))
            {
                Assert.Equal(endpoint.Id, Assert.Single(ports, port => port.Number == endpoint.Port!.Port).On);
                Assert.True(texts.Count(text => text == endpoint.Id) == 1 || texts.Any(text => text.Contains($"{endpoint.Port!.Port} {endpoint.Id}", StringComparison.Ordinal)), $"{endpoint.Id} is not on the face of {unit.Id}");
            }
        }
    }
}
