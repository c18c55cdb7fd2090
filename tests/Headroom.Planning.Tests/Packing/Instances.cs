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

    public const string T60 = "1000: 495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366x3 363 361 357 355 351 350x2 347 320 315 307 303 299 298x2 292 288 287 283 275x2 274 273x2 272x2 271 269x2 268 263 262 261 259 258 255 254 252x3 251";

    public const string U120 = "150: 98x3 96x2 94 93x2 92 91x2 90 87 86 85x2 84x5 83x2 82x2 81 80x3 79x2 78x4 76 74x2 73x4 72 71 70x3 69x3 67 66 64 62x2 60x2 59 58x3 57x4 55x3 50 49x3 47 46x2 45x2 44x2 43x4 42x5 41x3 39x2 38x3 37 36x3 35 33x3 32x2 30x3 29 28 27x2 26 25x2 24 23x2 20";

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

    public static PackProblem Parse(string instance, int ports)
    {
        var parts = instance.Split(": ");
        return OneLimit(long.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture), parts[1].Split(' ').Select(Load), ports);
    }

    private static (long, int) Load(string word)
    {
        var parts = word.Split('x').Select(part => int.Parse(part, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        return (parts[0], parts.Count > 1 ? parts[1] : 1);
    }

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
