using Headroom.Domain.Jobs;

namespace Headroom.Domain.Tests.Rules;

public class SoundJobTests
{
    private static readonly Gen<(int Drops, int Switches, bool Like, bool Counted)> Shapes =
        Gen.Select(Gen.Int[0, 40], Gen.Int[5, 9], Gen.Bool, Gen.Bool);

    [Fact]
    public void A_sound_random_job_raises_nothing() => Shapes.Sample(shape => Build(shape).Findings.Count == 0);

    [Fact]
    public void A_random_job_with_one_port_taken_twice_says_so_once() => Shapes.Where(s => s.Drops >= 2).Sample(shape =>
    {
        var site = Build(shape);
        site.Designs.Change(0, d => d with { Patch = [d.Patch[0] with { To = d.Patch[1].To }, .. d.Patch.Skip(1)] });
        return site.Codes.Single() == "RUL042";
    });

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Twenty_thousand_endpoints_are_checked_in_one_go(bool allWrong)
    {
        const int count = 20_000;
        var site = new Site { Chosen = "first" };
        site.Space("cupboard", 3, 3);
        site.Space("office", 90, 50);
        for (var n = 1; n <= count; n++)
        {
            site.Drops.Add(new($"K-{n:00000}", "cupboard", "office", [], null, null, site.Here()));
            site.Endpoint($"phone-{n:00000}", allWrong ? $"L-{n:00000}" : $"K-{n:00000}");
        }

        site.Designs.Add(site.Empty("first") with
        {
            Switches = [.. Enumerable.Range(0, count / 10).Select(s => site.Switch($"sw-{s}", "wren"))],
            Patch = [.. Enumerable.Range(0, count).Select(n => site.Patch($"K-{n + 1:00000}", $"sw-{n / 10}", n % 10 + 1))],
        });
        Assert.Equal(allWrong ? count : 0, site.Findings.Count);
    }

    private static Site Build((int Drops, int Switches, bool Like, bool Counted) shape)
    {
        var site = new Site { Chosen = "first" };
        site.Space("office", 9, 9);
        site.Space("cupboard", 3, 3);
        site.Pathways.Add(new("loft", "conduit", null, null, [], null, null, null, site.Here()));
        for (var n = 1; n <= shape.Drops; n++)
        {
            site.Drop($"K-{n:00}", 10 + n);
            site.Endpoint($"phone-{n}", $"K-{n:00}");
        }

        if (shape.Counted)
            site.Endpoints.Add(new("radio-1", "radio", null, "office", null, new Dictionary<string, Headroom.Domain.Quantities.Given<Headroom.Domain.Quantities.Watts>>(), "1 x radio", null, site.Here()));
        site.Designs.Add(Whole(site, shape.Switches));
        if (shape.Like)
            site.Designs.Add(site.Empty("second") with { Like = "first", Patch = [.. site.Designs[0].Patch.Take(1)] });
        return site;
    }

    // The switches hang in a line on the last two ports; the drops fill the first eight of each.
    private static Design Whole(Site site, int switches) => site.Empty("first") with
    {
        Switches = [.. Enumerable.Range(1, switches).Select(n => site.Switch($"sw-{n}", "wren"))],
        Uplinks = [site.Link("sw-1", 9, "line", null), .. Enumerable.Range(2, switches - 1).Select(n => site.Link($"sw-{n}", 9, $"sw-{n - 1}", 10))],
        Patch = [.. site.Drops.Select((d, i) => site.Patch(d.Id, $"sw-{i / 8 + 1}", i % 8 + 1))],
    };
}
