using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Tests.Drawings;

public sealed class ImperialTests
{
    private const double PointsPerInch = 72;

    public static TheoryData<string> Kinds => [.. DrawingList.All.Select(kind => kind.Id)];

    [Theory, MemberData(nameof(Kinds))]
    public void No_metre_kilogram_or_degree_Celsius_is_left_on_a_drawing_and_nothing_stands_over_another(string kind)
    {
        var drawn = 0;
        foreach (var job in new[] { "barn-vets/mended", "two-desks", "warm-shop", "planned" })
        {
            foreach (var picture in DrawingList.Find(kind)!.All(Imperial(job)))
            {
                var texts = Recorder.Of(picture).Texts;
                Assert.All(texts, text => Assert.DoesNotMatch(@"\d (m|mm|cm|kg|m³/h|m2|m²|°C)\b|\[m³/h\]|^°C", text.Text));
                Assert.All(texts, text => Assert.True(new Box(0, 0, picture.Width, picture.Height).Holds(text.Box), $"{picture.Title}: '{text.Text}' outside"));
                for (var i = 0; i < texts.Count; i++)
                {
                    for (var j = i + 1; j < texts.Count; j++)
                        Assert.False(texts[i].Box.Overlaps(texts[j].Box), $"{picture.Title}: '{texts[i].Text}' over '{texts[j].Text}'");
                }

                drawn++;
            }
        }

        Assert.True(drawn > 0);
    }

    // 1 ft = 0.3048 m and 1 in = 25.4 mm exactly (international yard of 1959; NIST Handbook 44, appendix C). Feet and inches beside it are sums by hand.
    [Theory]
    [InlineData(4.8, "15 ft 9 in")]
    [InlineData(0.3048, "1 ft")]
    [InlineData(0.254, "10 in")]
    [InlineData(3.6576, "12 ft")]
    [InlineData(1.2, "3 ft 11 in")]
    public void Rooms_are_told_in_feet_and_inches(double metres, string told) => Assert.Equal(told, Dimension.OfRoom(metres, new ShownUnits(imperial: true)));

    [Theory]
    [InlineData(0.4826, "19 in")]
    [InlineData(0.412, "16.2 in")]
    public void Equipment_is_told_in_inches(double metres, string told) => Assert.Equal(told, Dimension.OfThing(metres, new ShownUnits(imperial: true)));

    // At a quarter of an inch to the foot four feet are an inch on the sheet, whatever is written beside it.
    [Theory]
    [InlineData(48, "4 ft, scale 1/4 in = 1 ft", 1)]
    [InlineData(96, "8 ft, scale 1/8 in = 1 ft", 1)]
    [InlineData(12, "1 ft, scale 1 in = 1 ft", 1)]
    [InlineData(8, "1 ft, scale 1 1/2 in = 1 ft", 1.5)]
    [InlineData(480, "40 ft, scale 1 in = 40 ft", 1)]
    public void A_bar_of_feet_is_as_long_as_it_says(double ratio, string told, double inches)
    {
        var plate = new Plate();
        Marks.ScaleBar(plate, new Spot(0, 10), new DrawingScale(ratio, Imperial: true));
        var drawn = Recorder.Of(plate.Finish("bar"));
        Assert.Equal(told, Assert.Single(drawn.Texts).Text);
        Assert.Equal(inches * PointsPerInch, drawn.Rects.Max(box => box.Right) - drawn.Rects.Min(box => box.X), 1e-6);
    }

    [Fact]
    public void A_room_is_drawn_at_a_scale_of_inches_to_the_foot_and_as_large_as_it_says()
    {
        var input = Imperial("two-desks");
        var size = input.Job.Survey.Spaces[0].Size!.Value;
        var scale = DrawingScale.For(size.Length, size.Width, new Box(0, 0, 440, 400), imperial: true);
        Assert.Contains(scale.Ratio, new double[] { 8, 12, 16, 24, 48, 96, 192, 480, 1200, 2400 });
        Assert.Equal(size.Length / 0.0254 * PointsPerInch / scale.Ratio, scale.Points(size.Length), 1e-9);
    }

    private static PaperInput Imperial(string job) => DrawingInputs.Of(job) with { Units = new ShownUnits(imperial: true) };
}
