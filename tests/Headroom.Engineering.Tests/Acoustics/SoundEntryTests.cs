using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Acoustics;

/// <summary>Entries for the level at an ear on small sites; all figures are invented, the sums stand beside them.</summary>
public sealed class SoundEntryTests
{
    [Fact]
    public void A_switch_in_the_open_is_heard_by_its_power_and_distance_over_the_background()
    {
        // By hand: 44 + 10 lg(2 / (4 π 1²)) = 36.02; with 30: 10 lg(10^3.602 + 10^3) = 36.99.
        var entry = SoundSite.Yard.Entry;
        Assert.Equal(36.02, SoundSite.Yard.Equipment, 0.005);
        Assert.Equal(36.99, entry.Demand!.Value, 0.005);
        Assert.Equal((40, Verdict.Clear, 30), (entry.Limit, entry.Studied, entry.Floor));
    }

    [Fact]
    public void Two_alike_at_one_place_are_3_dB_more_than_one() => Assert.Equal(
        SoundSite.Yard.Equipment + 3.01,
        (SoundSite.Yard with { Switches = "sw-1..sw-2: {model: hum, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" }).Equipment,
        0.005);

    [Fact]
    public void In_a_room_the_walls_add_what_they_give_back()
    {
        // The office of soft surfaces: R at 1 kHz is about 20 m², so 4/R is some 0.2 against 0.16 straight over the desk.
        var entry = SoundSite.Office.Entry;
        Assert.InRange(SoundSite.Office.Equipment, 37.5, 41);
        var steps = entry.Story.Work(entry).Steps;
        Assert.Contains(steps, step => step.Name == "sw-1, straight" && Math.Abs(step.Value!.Value - 36.02) < 0.01);
        Assert.Contains(steps, step => step.Name == "sw-1, given back by the room");
    }

    [Fact]
    public void A_measured_reverberation_time_goes_before_surfaces_in_a_word()
    {
        var bare = SoundSite.Office with { Spaces = SoundSite.Office.Spaces.Replace("surfaces: soft", "surfaces: soft, reverberation: 2 s", StringComparison.Ordinal) };
        // By hand: A = 0.161 · 30 / 2 = 2.415; R = 2.415 / (1 − 2.415/59) = 2.518; 44 + 10 lg(0.159 + 4/2.518) = 46.42.
        Assert.Equal(46.42, bare.Equipment, 0.01);
    }

    [Fact]
    public void Near_walls_the_same_switch_is_louder() => Assert.Equal(
        6.02,
        (SoundSite.Office with { Listener = "at: 1.1 x 0.1 x 1.2 m", Switches = "sw-1: {model: hum, in: ROOM, at: 0.1 x 0.1 x 1.2 m}" }).Result.Listeners[0].Worst!.Loudest!.Direct!.Value
            - SoundSite.Office.Result.Listeners[0].Worst!.Loudest!.Direct!.Value,
        0.01);

    [Theory]
    [InlineData("still", "no fan and no figure, which is not silence")]
    [InlineData("five", "meant in bels")]
    public void What_has_no_figure_or_one_that_cannot_be_meant_is_unknown_and_asked_for(string model, string question)
    {
        var entry = (SoundSite.Yard with { Switches = $"sw-1: {{model: {model}, in: ROOM, at: 1.5 x 1.5 x 1.2 m}}" }).Entry;
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Contains(question, entry.Question, StringComparison.Ordinal);
        Assert.Equal(new KnownParts(1, 2), entry.Parts);
    }

    [Fact]
    public void A_pressure_at_a_distance_is_not_taken_for_a_power()
    {
        // By hand: the box of BX-1 at 1 m has 15.283 m², so the power is 44 + 11.84 = 55.84, and at 1 m over a plane 47.86.
        Assert.Equal(47.86, (SoundSite.Yard with { Switches = "sw-1: {model: pressed, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" }).Equipment, 0.01);
    }

    [Fact]
    public void A_pressure_at_the_outlet_is_carried_by_an_effective_radius_and_not_by_the_distance()
    {
        // By hand: 55 − 20 lg(1/0.12) = 36.58; by the distance it would be 55 − 20 lg(1/0.02) = 21.02.
        var near = SoundSite.Yard with { Switches = "sw-1: {model: near, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" };
        Assert.Equal(36.58, near.Equipment, 0.01);
        Assert.True(near.Entry.PlusMinus > 6);
    }

    [Fact]
    public void Without_a_background_only_what_is_too_loud_by_itself_has_a_verdict()
    {
        var quiet = SoundSite.Yard with { Spaces = "yard: {kind: outdoors}" };
        Assert.Equal(Verdict.Unknown, quiet.Entry.Studied);
        Assert.Contains("all equipment off", quiet.Entry.Question, StringComparison.Ordinal);
        var loud = quiet with { Listener = "at: 2.5 x 1.5 x 1.2 m, limit: 35 dB(A)" };
        Assert.Equal(Verdict.Short, loud.Entry.Studied);
    }

    [Fact]
    public void A_room_above_its_limit_by_itself_is_a_finding_about_the_room()
    {
        var entry = (SoundSite.Yard with { Listener = "at: 2.5 x 1.5 x 1.2 m, limit: 29 dB(A)" }).Entry;
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains(entry.Advice, advice => advice.StartsWith("nothing that is installed mends it", StringComparison.Ordinal));
        Assert.Contains(entry.Beside, row => row.Name == "all equipment off" && row.Note.Contains("room itself", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nobody_was_asked_the_kind_of_room_has_a_criterion_with_its_source()
    {
        var entry = (SoundSite.Office with { Listener = "at: 2.5 x 1.5 x 1.2 m" }).Entry;
        Assert.Equal(40, entry.Limit);
        Assert.Contains(entry.Story.Work(entry).Inputs, input => input.Name == "limit" && input.Origin.Contains("BS 8233", StringComparison.Ordinal));
        Assert.Contains("how loud may it be", (SoundSite.Yard with { Listener = "at: 2.5 x 1.5 x 1.2 m" }).Entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_client_has_already_counts_as_often_as_it_stands_there()
    {
        var one = SoundSite.Yard with { Switches = "", More = "  noises: {copier: {in: ROOM, at: 1.5 x 1.5 x 1.2 m, power: 44 dB(A)}}" };
        Assert.Equal(36.02, one.Equipment, 0.005);
        Assert.Equal(39.03, (one with { More = one.More.Replace("power:", "count: 2, power:", StringComparison.Ordinal) }).Equipment, 0.005);
        var silent = one with { More = "  noises: {copier: {in: ROOM, at: 1.5 x 1.5 x 1.2 m}}" };
        Assert.Equal(Verdict.Unknown, silent.Entry.Studied);
    }

    [Fact]
    public void Without_any_equipment_the_background_is_what_is_heard()
    {
        var entry = (SoundSite.Yard with { Switches = "" }).Entry;
        Assert.Equal((30, Verdict.Clear), (entry.Demand, entry.Studied));
    }

    [Fact]
    public void Plain_words_say_whether_it_is_heard_and_what_a_microphone_gets()
    {
        var answers = SoundSite.Yard.Study().Answers.Where(answer => answer.Subject == "ear").Select(answer => answer.Text).ToList();
        Assert.Contains(answers, text => text.StartsWith("Disturbing: 36 dB(A) alone, 6 dB above the background of 30", StringComparison.Ordinal));
        // By hand: 60 + 6.02 − 36.99 = 29.03.
        Assert.Contains(answers, text => text.Contains("29 dB above the noise", StringComparison.Ordinal));
    }

    [Fact]
    public void Octaves_spread_a_level_and_do_not_raise_it()
    {
        var tone = SoundSite.Yard with { Switches = "sw-1: {model: toned, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" };
        Assert.Equal(36.02, tone.Equipment, 0.005);
        Assert.DoesNotContain(tone.Entry.Assumed, assumed => assumed.Contains("octaves", StringComparison.Ordinal));
        Assert.Contains(SoundSite.Yard.Entry.Assumed, assumed => assumed.Contains("octaves", StringComparison.Ordinal));
    }

    [Fact]
    public void Too_loud_asks_for_distance_cabinet_or_a_quieter_device_and_each_keeps_the_limit()
    {
        var entry = (SoundSite.Yard with { Listener = "at: 2.5 x 1.5 x 1.2 m, limit: 35 dB(A)" }).Entry;
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Equal(3, entry.Advice.Count);
        Assert.Contains(entry.Cautions, caution => caution.Code == "WARM-CABINET");
        var holds = entry.Story.Holds(entry).Single(row => row.Unit == "m");
        Assert.Equal(Verdict.Clear, (SoundSite.Yard with { Listener = $"at: {Text(1.5 + holds.AtLimit!.Value + 0.001)} x 1.5 x 1.2 m, limit: 35 dB(A)" }).Entry.Studied);
    }

    private static string Text(double value) => value.ToString("F6", System.Globalization.CultureInfo.InvariantCulture);
}
