using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

// Our own instances of two limits (ports, tenths of a watt), each proved by at least two outside solvers; and published ones of one limit.
internal static class Instances
{
    private static readonly (string Id, int Ports, long Watts, long Cost) S8 = ("S8", 8, 650, 120);
    private static readonly (string Id, int Ports, long Watts, long Cost) S16 = ("S16", 16, 1500, 260);
    private static readonly (string Id, int Ports, long Watts, long Cost) S24 = ("S24", 24, 2500, 400);

    private static readonly (string Id, int Ports, long Watts, long Cost) S48 = ("S48", 48, 5000, 760);
    private static readonly (string Id, int Ports, long Watts, long Cost) DearS48 = ("S48", 48, 5000, 800);

    public static PackProblem Named(string id) => id switch
    {
        "V1" => Of([(16, 35), (14, 95), (10, 160), (4, 240)], S8, S16, S24, S48),
        "V2" => Of([(6, 255), (10, 70)], S8, S16, S24, S48),
        "V3" => Of([(12, 150), (12, 100)], ("a", 8, 600, 100), ("b", 24, 1900, 290)),
        "V4" => Of([(3, 60), (3, 40), (6, 20)], ("a", 4, 100, 10)),
        "V5" => Of([(4, 51), (4, 26), (4, 23)], ("a", 10, 100, 10), ("b", 20, 180, 17)),
        "V6a" => Of([(4, 300), (1, 255), (1, 95), (1, 65), (2, 35)], ("a", 4, 600, 1)),
        "V6b" => Of([(3, 300), (1, 255), (1, 128), (1, 95), (1, 70), (2, 65)], ("a", 4, 600, 1)),
        "V6c" => Of([(1, 300), (3, 255), (3, 160), (1, 128), (1, 35)], ("a", 4, 600, 1)),
        "V7" => Of([(40, 35), (24, 95), (18, 160), (6, 255), (12, 65)], S8, S16, S24, DearS48),
        "V8" => Barred(Named("V7"), kind: 3, "S8", "S16"),
        _ => throw new ArgumentException(id, nameof(id)),
    };

    public static PackProblem OneLimit(long limit, IEnumerable<(long Load, int Count)> loads, int ports = int.MaxValue) =>
        Of([.. loads.Select(load => (load.Count, load.Load))], ("bin", ports, limit, 1));

    public static PackProblem Of((int Count, long Watts)[] items, params (string Id, int Ports, long Watts, long Cost)[] boxes) => new(
        1,
        [.. items.Select((item, i) => new PackKind($"{item.Count} x {item.Watts}, {i}", item.Count, [0]))],
        [.. boxes.Select(box => new PackBox(box.Id, box.Cost, [box.Ports], [.. items.Select((item, i) => (item, i)).Where(at => at.item.Watts <= box.Watts).Select(at => new PackServe(at.i, 0, [at.item.Watts]))], [box.Watts]))]);

    private static PackProblem Barred(PackProblem problem, int kind, params string[] boxes) => problem with
    {
        Boxes = [.. problem.Boxes.Select(box => boxes.Contains(box.Id) ? box with { Serves = [.. box.Serves.Where(serve => serve.Kind != kind)] } : box)],
    };
}
