using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Changes;

namespace Headroom.JobFiles.Tests.Changes;

/// <summary>What is written when something is moved.</summary>
public sealed class MoveTextTests
{
    private static readonly string Barn = File.ReadAllText(Repository.PathOf("examples/barn-vets/job.yaml"));

    private static readonly Catalogue Models = CatalogueFiles.ReadShipped().Value!;

    [Theory]
    [InlineData("2.4 x 1.2 x 1.2 m", "2.4|1.2|1.2", "m", "")]
    [InlineData("6 ft x 5 ft x 4 ft", "6|5|4", "ft", "")]
    [InlineData("20 × 14 × 9 ft measured", "20|14|9", "ft", "measured")]
    [InlineData("2 m x 40 in x 1.2 m assumed", "2|40 in|1.2", "m", "assumed")]
    public void Lengths_are_taken_apart_and_put_together_again(string written, string sides, string unit, string origin)
    {
        var lengths = LengthsText.Read(written)!;
        Assert.Equal((sides, unit, origin), (string.Join('|', lengths.Sides), lengths.Unit.Symbol, lengths.Origin));
        var again = LengthsText.Read(lengths.Write(lengths.Sides))!;
        Assert.Equal((sides, unit, origin), (string.Join('|', again.Sides.Select(side => side.EndsWith(" " + unit, StringComparison.Ordinal) ? side[..^(unit.Length + 1)] : side)), again.Unit.Symbol, again.Origin));
    }

    // One length in a unit of its own must not give it to the others.
    [Theory]
    [InlineData("2.4 x 1.2 x 1.2 m", "3|1.2|1.2", "3 x 1.2 x 1.2 m")]
    [InlineData("2.4 x 1.2 x 1.2 m", "2.4|1.2|48 in", "2.4 m x 1.2 m x 48 in")]
    [InlineData("20 x 14 x 9 ft measured", "20|14|2.8 m", "20 ft x 14 ft x 2.8 m measured")]
    [InlineData("20 x 14 x 9 ft", "||", null)]
    [InlineData(null, "1|2|3", "1 x 2 x 3 m")]
    public void A_length_that_is_typed_keeps_its_unit_and_the_others_theirs(string? written, string sides, string? after) =>
        Assert.Equal(after, LengthsText.Read(written)!.Write(sides.Split('|')));

    [Theory, InlineData("unknown"), InlineData("2 x 3 m"), InlineData("a x b x c"), InlineData("2 x 3 x 4")]
    public void What_are_no_three_lengths_is_none(string written) => Assert.Null(LengthsText.Read(written));

    // Whatever cords are moved or pulled, in the design itself or in one that is like it: those and no others are where they are wanted.
    [Fact]
    public void Cords_that_are_not_moved_stay_where_they_are() => Gen.Select(Gen.Int[0, 22].Array[1, 5], Gen.Int[0, 3], Gen.Bool).Sample(drawn =>
    {
        var (picks, pulled, inherited) = drawn;
        var design = inherited ? "mended" : "as-offered";
        var before = Patch(Barn, design);
        var cords = before.Keys.Order(StringComparer.Ordinal).ToList();
        var wanted = picks.Distinct().Select(pick => cords[pick % cords.Count]).ToDictionary(cord => cord, _ => (string?)null);
        foreach (var cord in wanted.Keys.Skip(pulled))
            wanted[cord] = "sw-1/" + (60 + cords.IndexOf(cord));
        var changes = CordMoves.Of(new JobOutline(Barn), design, wanted, inherited ? [.. before.Keys] : []);
        var edit = JobFieldEditor.Put(Barn, changes);
        Assert.True(edit.Text is not null, string.Join('\n', edit.Findings));
        var after = Patch(edit.Text, design);
        foreach (var cord in cords)
            Assert.Equal(wanted.TryGetValue(cord, out var port) ? port : before[cord], after.GetValueOrDefault(cord));
        Assert.Empty(after.Keys.Except(cords));
    }, iter: Long.On ? 1000 : 60);

    [Fact]
    public void A_thing_of_another_design_is_changed_in_the_one_that_is_like_it()
    {
        var (outline, job) = (new JobOutline(Barn), Read(Barn));
        Assert.Equal(["designs", "mended", "switches", "sw-1", "unit"], UnitMoves.Of(outline, job, "mended", "sw-1", ("unit", "7"))!.Path);
        var manager = UnitMoves.Of(outline, job, "mended", "manager", ("unit", "7"))!;
        Assert.Equal(["designs", "mended", "fittings", "manager"], manager.Path);
        Assert.Equal("{kind: manager, in: A, unit: 7, height: 1 U, places: 30, price: 16 EUR}", manager.After);
        Assert.Equal(["survey", "fittings", "shelf", "unit"], UnitMoves.Of(outline, job, "mended", "shelf", ("unit", "7"))!.Path);
        Assert.Null(UnitMoves.Of(outline, job, "mended", "nothing", ("unit", "7")));
    }

    private static Dictionary<string, string> Patch(string text, string design) => DesignLineage.Whole(Read(text), design)!.Patch.ToDictionary(cord => cord.What, cord => cord.To.ToString());

    // Read as it is written; whether a port exists is not asked here.
    private static Job Read(string text) => JobFile.ParseMeanwhile(text, "job.yaml", null, () => Models, null).Value!;
}
