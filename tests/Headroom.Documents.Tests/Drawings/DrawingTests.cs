using System.Xml.Linq;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;

namespace Headroom.Documents.Tests.Drawings;

public sealed class DrawingTests
{
    // The widest that is not made smaller on a sheet of A4.
    private const double Widest = 524;

    public static TheoryData<string, string> EveryDrawing
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var job in new[] { "barn-vets", "barn-vets/mended", "one-desk", "print-shop", "school-wings", "two-desks", "warm-shop", "planned", "strange-names" })
            {
                foreach (var kind in DrawingList.All)
                    data.Add(job, kind.Id);
            }

            return data;
        }
    }

    [Theory, MemberData(nameof(EveryDrawing))]
    public void No_text_stands_over_another_or_outside_its_drawing(string job, string kind)
    {
        foreach (var picture in DrawingList.Find(kind)!.All(DrawingInputs.Of(job)))
        {
            var texts = Recorder.Of(picture).Texts;
            var inside = new Box(0, 0, picture.Width, picture.Height);
            Assert.NotEmpty(texts);
            Assert.True(picture.Width <= Widest, $"{picture.Title} is {picture.Width} wide");
            Assert.All(texts, text => Assert.True(inside.Holds(text.Box), $"{picture.Title}: '{text.Text}' stands at {text.Box} of {inside}"));
            for (var i = 0; i < texts.Count; i++)
            {
                for (var j = i + 1; j < texts.Count; j++)
                    Assert.False(texts[i].Box.Overlaps(texts[j].Box), $"{picture.Title}: '{texts[i].Text}' {texts[i].Box} over '{texts[j].Text}' {texts[j].Box}");
            }
        }
    }

    [Theory, MemberData(nameof(EveryDrawing))]
    public void Every_drawing_is_a_well_formed_page_with_its_title(string job, string kind)
    {
        foreach (var picture in DrawingList.Find(kind)!.All(DrawingInputs.Of(job)))
        {
            var root = XDocument.Parse(SvgCanvas.Write(picture)).Root!;
            Assert.Equal(picture.Title, root.Elements().First(element => element.Name.LocalName == "title").Value);
            Assert.DoesNotContain("NaN", root.ToString(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("barn-vets", "rack", "A")]
    [InlineData("barn-vets", "face", "sw-1")]
    [InlineData("barn-vets", "restart", "")]
    [InlineData("barn-vets/mended", "discharge", "ups-1")]
    [InlineData("two-desks", "room", "office")]
    [InlineData("barn-vets", "one-line", "sw-1")]
    [InlineData("barn-vets", "uplinks", "")]
    [InlineData("barn-vets", "warming", "cupboard")]
    [InlineData("warm-shop", "fan", "sw-1")]
    [InlineData("planned", "front", "")]
    [InlineData("planned", "turning", "")]
    public void Accepted_drawings_are_drawn_as_they_were_looked_at(string job, string kind, string subject)
    {
        var made = SvgCanvas.Write(DrawingList.Find(kind)!.Draw(DrawingInputs.Of(job), subject)!) + "\n";
        var file = Path.Combine(Repository.Root, "tests", "Headroom.Documents.Tests", "Drawings", "Accepted", $"{job.Replace('/', '-')}-{kind}.svg");
        if (Environment.GetEnvironmentVariable("HEADROOM_ACCEPT") == "1")
            File.WriteAllText(file, made);
        Assert.True(File.Exists(file) && File.ReadAllText(file) == made, $"{file} differs: HEADROOM_ACCEPT=1 renews it; look at it as a picture before it is kept.");
    }

    [Fact]
    public void Every_kind_is_drawn_of_one_job_or_another() => Assert.All(
        DrawingList.All, kind => Assert.Contains(new[] { "barn-vets/mended", "two-desks", "warm-shop", "planned" }, job => kind.All(DrawingInputs.Of(job)).Count > 0));

    [Fact]
    public void Files_of_a_pack_have_names_of_their_own_that_every_disk_takes()
    {
        var pack = DrawingPack.Write(DrawingInputs.Of("school-wings"), [.. DrawingList.All.Where(kind => kind.Needs is null)]);
        Assert.Equal(pack.Papers.Count, pack.Papers.Select(paper => paper.Name.ToUpperInvariant()).Distinct().Count());
        Assert.All(pack.Papers, paper => Assert.Matches(@"^[\w.-]+\.svg$", paper.Name));
        Assert.Contains(pack.Missing, missing => missing.Id == "fan" && missing.Why.Length > 0);
    }

    [Fact]
    public void A_drawing_is_null_where_the_job_has_nothing_for_it()
    {
        var desk = DrawingInputs.Of("one-desk");
        Assert.All(new[] { "rack", "room", "discharge" }, kind => Assert.Null(DrawingList.Find(kind)!.Draw(desk, "no-such-thing")));
        Assert.Empty(DrawingList.Find("rack")!.All(desk));
        Assert.Empty(DrawingList.Find("discharge")!.All(desk));
    }
}
