using Headroom.Documents.Drawings.Air;
using Headroom.Documents.Papers;
using Headroom.Engineering.Airflow;
using Headroom.Engineering.Heat;

namespace Headroom.Documents.Tests.Drawings;

public sealed class AirTests
{
    private const double SecondsPerHour = 3600;

    private static readonly PaperInput Shop = DrawingInputs.Of("warm-shop");

    [Fact]
    public void A_cupboard_begins_at_the_air_outside_and_ends_where_the_study_of_heat_has_it()
    {
        var place = Assert.Single(Shop.Results.Heat.Places);
        var cases = Warming.Of(place);
        Assert.Equal(["summer", "weekday"], cases.Select(one => one.Name));
        Assert.All(cases, one =>
        {
            Assert.Equal(place.In(one.Name)!.Around, one.CelsiusAt(0));
            Assert.Equal(place.In(one.Name)!.Worked!.Value, one.CelsiusAt(100 * one.Constant), 1e-9);
            Assert.Equal(place.In(one.Name)!.Worked!.Value, one.Settled, 1e-9);
            // First-order warming: 1 − 1/e after one constant.
            Assert.Equal(one.Around + 0.632_121 * one.Rise, one.CelsiusAt(one.Constant), 1e-4);
        });
    }

    [Theory]
    [InlineData("sw-1")]
    [InlineData("sw-2")]
    public void The_working_point_lies_on_the_curve_of_the_fan_and_on_the_path_of_its_air(string id)
    {
        var duty = FanDuty.Of(Shop.Results.Bound.Switches.Single(unit => unit.Id == id), Shop.Results.Bound.Catalogue)!;
        Assert.Equal(duty.Curve.PressureAt(duty.Point.Flow), AirPath.Loss(duty.Resistance, duty.Point.Flow), 1e-6);
        Assert.Equal(id == "sw-1", duty.Put is not null);
        if (duty.PointThen is { } then)
            Assert.Equal(duty.PutCurve!.PressureAt(then.Flow), AirPath.Loss(duty.ResistanceThen!.Value, then.Flow), 1e-6);
    }

    [Fact]
    public void The_air_of_a_changed_fan_is_that_of_the_ledger()
    {
        var duty = FanDuty.Of(Shop.Results.Bound.Switches.Single(unit => unit.Id == "sw-1"), Shop.Results.Bound.Catalogue)!;
        var entry = Shop.Ledger.Entries.Single(one => one.Id == "heat/sw-1/fan");
        Assert.Equal(entry.Demand!.Value, duty.Point.Flow * SecondsPerHour, 1e-9);
        Assert.Equal(entry.Limit!.Value, duty.PointThen!.Value.Flow * SecondsPerHour, 1e-9);
    }

    [Fact]
    public void The_caution_stands_with_a_changed_fan_alone()
    {
        string Told(string id) => string.Join(' ', Recorder.Of(FanDrawing.Of(Shop, id)!).Texts.Select(text => text.Text));
        Assert.Contains("Caution: changing a fan", Told("sw-1"), StringComparison.Ordinal);
        Assert.DoesNotContain("Caution", Told("sw-2"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bar_in_degrees_begins_at_the_air_outside_of_the_cupboard_in_its_warmest_case()
    {
        Assert.Equal(29, Shop.Ledger.Entries.Single(one => one.Id == "heat/sw-1/inlet").Floor);
        // The weekend of the barn is written of the cupboard alone: nobody says how warm it is outside.
        Assert.Equal(15, DrawingInputs.Of("barn-vets").Ledger.Entries.Single(one => one.Id == "heat/sw-1/inlet").Floor);
    }
}
