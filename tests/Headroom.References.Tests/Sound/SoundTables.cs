namespace Headroom.References.Tests.Sound;

/// <summary>The tables of sound, in the order of the reference.</summary>
internal static class SoundTables
{
    internal static IReadOnlyList<PrintedTable> All { get; } =
    [
        Of("Levels and their sums (sound 1.1)", "sound-levels", LevelFigures.Work),
        Of("The room taken out of a reading (sound 1.2)", "sound-background", BackgroundFigures.Work),
        Of("Instruments, uncertainty, repeats (sound 1.3 to 1.5)", "sound-meters", MeterFigures.Work),
        Of("A and C weighting (sound 1.6)", "sound-weighting", SpectrumFigures.Weights),
        Of("Octave spectra (sound 1.7)", "sound-spectra", SpectrumFigures.Work),
        Of("Rating curves (sound 1.8)", "sound-ratings", RatingFigures.Work),
        Of("Criteria by kind of room (sound 1.9)", "sound-criteria", RatingFigures.Criteria),
        Of("What is declared (sound 2.1)", "sound-declared", DeclaredFigures.Work),
        Of("Free field and surfaces (sound 2.2)", "sound-open-field", FieldFigures.Work),
        Of("Absorption (sound 2.3)", "sound-surfaces", RoomFigures.Surfaces),
        Of("Rooms (sound 2.4, 2.5)", "sound-rooms", RoomFigures.Work),
        Of("Near the outlet, and priors (sound 2.6, 2.7)", "sound-near", FieldFigures.Near),
        Of("Fans by their speed (sound 3.1, 3.2)", "sound-fans", FanFigures.Work),
        Of("Air, grilles and volts of fans (sound 3.3 to 3.7)", "air-fans", AirFigures.Work),
        Of("Edges (sound 4.1, 4.2)", "sound-barriers", EdgeFigures.Work),
        Of("Cabinets and walls (sound 4.3, 4.4)", "sound-enclosures", EnclosureFigures.Work),
        Of("Heard or not (sound 5.1)", "sound-audibility", AudibilityFigures.Work),
        Of("Speech (sound 5.2)", "sound-speech", SpeechFigures.Work),
        Of("Heat, cupboards, limits, life (sound 6)", "heat", HeatFigures.Work),
        Of("What trade figures come to (sound 7.2)", "sound-trade", TradeFigures.Work) with { Shown = false },
        Of("Statistics of readings (sound 8)", "sound-statistics", StatisticsFigures.Work),
    ];

    private static PrintedTable Of(string heading, string file, Func<Printed, Figure> work) => new(heading, file, work) { Reference = "sound-air-heat" };
}
