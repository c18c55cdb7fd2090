using System.Globalization;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

/// <summary>One case of section 2: a source, a cable of one or more pieces, and a load.</summary>
internal sealed record LoadCase(string Id, double SourceVolts, IReadOnlyList<CablePiece> Pieces, int Pairs, double LoadWatts)
{
    internal static IReadOnlyDictionary<string, LoadCase> All { get; } =
        Csv.Read("constant-power-load-inputs").Select(From).ToDictionary(found => found.Id);

    internal double LoopOhms => Pieces.Sum(piece => PairLoop.PowerLoopOhms(piece.OhmsPerMetre, piece.Metres, Pairs));

    internal OperatingPoint? Solved => ConstantPowerLoad.Solve(SourceVolts, LoopOhms, LoadWatts);

    private static LoadCase From(string[] fields) => new(
        fields[0], Number(fields[1]), [.. fields[2].Split(" + ").Select(Piece)], int.Parse(fields[3], CultureInfo.InvariantCulture), Number(fields[4]));

    // "90 m 23 AWG 45 °C"
    private static CablePiece Piece(string text)
    {
        var words = text.Split(' ');
        return new CablePiece(Metres: Number(words[0]), Awg: Number(words[2]), Celsius: Number(words[4]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

/// <summary>A length of cable of one gauge at one temperature.</summary>
internal sealed record CablePiece(double Metres, double Awg, double Celsius)
{
    internal double OhmsPerMetre => Conductor.OhmsPerMetre(Conductor.AreaSquareMillimetres(Awg), Celsius);
}
