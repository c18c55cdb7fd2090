using Headroom.Domain.Addresses;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Domain.Rules;

namespace Headroom.Domain.Tests.Rules;

/// <summary>One slip a row, made in a job with nothing wrong, and the rule that it breaks.</summary>
internal static class SlipTable
{
    public static IReadOnlyDictionary<string, (RuleCode Rule, Action<Site> Make)> Rows { get; } =
        new Dictionary<string, (RuleCode, Action<Site>)>
        {
            ["two spaces of one id"] = (RuleCodes.DuplicateId, s => s.Space("office", 2, 2)),
            ["a rack and a space of one id"] = (RuleCodes.DuplicateId, s => s.Space("A", 2, 2)),
            ["a listener and a drop of one id"] = (RuleCodes.DuplicateId, s => s.Drop("desk", 20)),
            ["two drops of one id"] = (RuleCodes.DuplicateId, s => s.Drop("K-01", 20)),
            ["two endpoints of one id"] = (RuleCodes.DuplicateId, s => s.Endpoint("phone-1", null)),
            ["two designs of one id"] = (RuleCodes.DuplicateId, s => s.Designs.Add(s.Empty("first"))),
            ["two pathways of one id"] = (RuleCodes.DuplicateId, s => s.Pathways.Add(s.Pathways[0] with { At = s.Here() })),
            ["two switches of one id"] = (RuleCodes.DuplicateId, s => First(s, d => d with { Switches = [.. d.Switches, s.Switch("sw-2", "wren")] })),
            ["a switch and an injector of one id"] = (RuleCodes.DuplicateId, s => First(s, d => d with { Injectors = [.. d.Injectors, s.Injector("sw-1", "dunnock")] })),
            ["a switch named like an inherited injector"] = (RuleCodes.DuplicateId, s => Second(s, d => d with { Switches = [s.Switch("inj-1", "wren")] })),
            ["a switch and an endpoint of one id"] = (RuleCodes.DuplicateId, s => s.Endpoint("sw-1", null)),
            ["a patched id of a drop and another endpoint"] = (RuleCodes.AmbiguousPatch, s => s.Endpoint("K-01", null)),
            ["a wall beside nothing"] = (RuleCodes.UnknownSpace, s => s.Partitions.Change(0, w => w with { Between = ["office", "yard"] })),
            ["a wall between a space and itself"] = (RuleCodes.WallBetween, s => s.Partitions.Change(0, w => w with { Between = ["office", "office"] })),
            ["two walls between the same two spaces"] = (RuleCodes.WallBetween, s => s.Partitions.Add(s.Partitions[0] with { Id = "other", Between = ["store", "office"], At = s.Here() })),
            ["a door larger than its wall"] = (RuleCodes.DoorBeyondWall, s => s.Partitions.Change(0, w => w with { Door = Made.Of(new SquareMetres(13)) })),
            ["a wall and a space of one id"] = (RuleCodes.DuplicateId, s => s.Partitions.Change(0, w => w with { Id = "office" })),
            ["a switch and a noise of one id"] = (RuleCodes.DuplicateId, s => s.Noises.Change(0, n => n with { Id = "sw-1" })),
            ["a noise nowhere"] = (RuleCodes.UnknownSpace, s => s.Noises.Change(0, n => n with { In = "yard" })),
            ["a noise outside its space"] = (RuleCodes.OutsideSpace, s => s.Noises.Change(0, n => n with { Spot = s.At(7, 1, 1) })),
            ["a screen nowhere"] = (RuleCodes.UnknownSpace, s => s.Screens.Change(0, c => c with { In = "yard" })),
            ["a screen outside its space"] = (RuleCodes.OutsideSpace, s => s.Screens.Change(0, c => c with { To = s.At(3, 2, 4) })),
            ["a rack of no cabinet in the catalogue"] = (RuleCodes.UnknownCabinet, s => s.Racks.Change(0, r => r with { Cabinet = "alcov" })),
            ["a rack outside its space"] = (RuleCodes.OutsideSpace, s => s.Racks.Change(0, r => r with { Spot = s.At(2, 0.3, 1) })),
            ["an ear in a wall"] = (RuleCodes.EarInWall, s => s.Listeners.Change(0, l => l with { Spot = s.At(0, 1, 1.2) })),
            ["an ear on the floor"] = (RuleCodes.EarInWall, s => s.Listeners.Change(0, l => l with { Spot = s.At(2, 1, 0.01) })),
            ["a drop from nowhere"] = (RuleCodes.UnknownSpace, s => s.Drops.Change(0, d => d with { From = "cupbord" })),
            ["a drop to nowhere"] = (RuleCodes.UnknownSpace, s => s.Drops.Change(0, d => d with { To = "yard" })),
            ["a drop from a rack"] = (RuleCodes.UnknownSpace, s => s.Drops.Change(0, d => d with { From = "A" })),
            ["a rack nowhere"] = (RuleCodes.UnknownSpace, s => s.Racks.Change(0, r => r with { In = "cubpoard" })),
            ["a listener nowhere"] = (RuleCodes.UnknownSpace, s => s.Listeners.Change(0, l => l with { In = "ofice" })),
            ["an endpoint near nothing"] = (RuleCodes.UnknownSpace, s => s.Endpoints.Change(3, e => e with { Near = "yard" })),
            ["a cupboard beside nothing"] = (RuleCodes.UnknownSpace, s => s.Spaces.Change(2, c => c with { Enclosure = new(null, [], null, "kitchen") })),
            ["a switch that stands nowhere"] = (RuleCodes.UnknownStanding, s => Switch(s, u => u with { Standing = new("B", null, null) })),
            ["an endpoint on no drop"] = (RuleCodes.UnknownDrop, s => s.Endpoint("phone-4", "K-04")),
            ["an uplink on no drop"] = (RuleCodes.UnknownDrop, s => First(s, d => d with { Uplinks = [d.Uplinks![0] with { Drop = "K-99" }] })),
            ["a run by no pathway"] = (RuleCodes.UnknownPathway, s => Piece(s, p => p with { By = "lofft" })),
            ["a run of no cable"] = (RuleCodes.UnknownCable, s => Piece(s, p => p with { Cable = "fren" })),
            ["a cord of no cable"] = (RuleCodes.UnknownCable, s => s.Drops.Change(0, d => d with { CordAtDevice = Site.Cord with { Cable = "moss" } })),
            ["an endpoint of no model"] = (RuleCodes.UnknownEndpointModel, s => s.Endpoint("phone-4", null, "fone")),
            ["a switch of no model in the catalogue"] = (RuleCodes.UnknownUnitModel, s => Switch(s, u => u with { Model = "wern" })),
            ["an injector of no model in the catalogue"] = (RuleCodes.UnknownUnitModel, s => First(s, d => d with { Injectors = [d.Injectors[0] with { Model = "lark" }] })),
            ["a standby supply of no model in the catalogue"] = (RuleCodes.UnknownUnitModel, s => First(s, d => d with { Standby = [d.Standby[0] with { Model = "elm" }] })),
            ["an uplink with no module in the catalogue"] = (RuleCodes.UnknownModule, s => Link(s, u => u with { Module = "beed" })),
            ["an uplink with no module in the catalogue at its far end"] = (RuleCodes.UnknownModule, s => Link(s, u => u with { FarModule = "beed" })),
            ["a switch fed by nothing"] = (RuleCodes.UnknownStandby, s => Switch(s, u => u with { FedBy = "ups-2" })),
            ["a supply the model does not have"] = (RuleCodes.UnknownSupply, s => Switch(s, u => u with { Supply = "big" })),
            ["a design like none"] = (RuleCodes.UnknownDesign, s => s.Designs.Add(s.Empty("third") with { Like = "frist" })),
            ["a chosen design that is none"] = (RuleCodes.UnknownDesign, s => s.Chosen = "frist"),
            ["a patched drop that is none"] = (RuleCodes.UnknownPatched, s => AlsoPatch(s, s.Patch("K-99", "sw-1", 5))),
            ["a patch to no unit"] = (RuleCodes.UnknownUnit, s => AlsoPatch(s, s.Patch("spare", "sw-9", 5), "spare")),
            ["an uplink from no unit"] = (RuleCodes.UnknownUnit, s => AlsoLink(s, s.Link("sw-9", 1, "line", null))),
            ["an uplink to no unit"] = (RuleCodes.UnknownUnit, s => AlsoLink(s, s.Link("sw-1", 5, "sw-9", 1))),
            ["an uplink to a name like a switch's"] = (RuleCodes.UnknownUnit, s => AlsoLink(s, s.Link("sw-1", 5, "sw-3", null))),
            ["an injector fed with data from no unit"] = (RuleCodes.UnknownUnit, s => Injector(s, i => i with { From = [new("sw-9", 1)] })),
            ["a priority for nothing"] = (RuleCodes.UnknownPriority, s => Setting(s, p => p with { EndpointPriorities = new Dictionary<string, Priority> { ["phone-9"] = Priority.High } })),
            ["taking away what is not there"] = (RuleCodes.NothingToRemove, s => Second(s, d => d with { Removed = ["sw-3"] })),
            ["taking away in a design that stands alone"] = (RuleCodes.NothingToRemove, s => s.Designs.Add(s.Empty("third") with { Removed = ["sw-1"] })),
            ["a reading at nothing"] = (RuleCodes.UnknownReadingPlace, s => s.Readings.Add(s.Reading("sw-3/5", 2))),
            ["a reserve of no kind"] = (RuleCodes.UnknownReserve, s => Reserve(s, "pwoer", new(0.2, null, "20 %", Origin.Unstated, s.Here()))),
            ["a growth of no kind"] = (RuleCodes.UnknownReserve, s => s.Policy = s.Policy with { Growth = new Dictionary<string, Reserve> { ["some ports"] = Headroom.Domain.Jobs.Reserve.Fifth } }),
            ["a reserve in the wrong unit"] = (RuleCodes.ReserveUnit, s => Reserve(s, "volts", new(null, 2, "2 W", Origin.Unstated, s.Here()))),
            ["a switch without model"] = (RuleCodes.UnitWithoutModel, s => Second(s, d => d with { Switches = [s.Switch("sw-3", null)] })),
            ["an injector without model"] = (RuleCodes.UnitWithoutModel, s => Second(s, d => d with { Injectors = [s.Injector("inj-2", null)] })),
            ["a design like itself"] = (RuleCodes.LikeRing, s => s.Designs.Add(s.Empty("third") with { Like = "third" })),
            ["designs like each other"] = (RuleCodes.LikeRing, s => First(s, d => d with { Like = "second" })),
            ["a patch to a port that is none"] = (RuleCodes.NoSuchPort, s => AlsoPatch(s, s.Patch("spare", "sw-1", 11), "spare")),
            ["a patch to an injector's port that is none"] = (RuleCodes.NoSuchPort, s => AlsoPatch(s, s.Patch("spare", "inj-1", 2), "spare")),
            ["an uplink from a port that is none"] = (RuleCodes.NoSuchPort, s => AlsoLink(s, s.Link("sw-1", 25, "line", null))),
            ["a limit for a port that is none"] = (RuleCodes.NoSuchPort, s => Setting(s, p => p with { PortLimits = new Dictionary<int, Given<Watts>> { [12] = Made.Of(new Watts(15)) } })),
            ["a priority for a port that is none"] = (RuleCodes.NoSuchPort, s => Setting(s, p => p with { Priorities = new Dictionary<int, Priority> { [12] = Priority.High } })),
            ["a reading at a port that is none"] = (RuleCodes.NoSuchPort, s => s.Readings.Add(s.Reading("sw-1/11", 2))),
            ["a patch to a switch without port number"] = (RuleCodes.PortNotSaid, s => AlsoPatch(s, s.Patch("spare", "sw-1", null), "spare")),
            ["a patch to a midspan without port number"] = (RuleCodes.PortNotSaid, s =>
            {
                Injector(s, i => i with { Model = "heron" });
            }),
            ["two drops on one port"] = (RuleCodes.PortTaken, s => AlsoPatch(s, s.Patch("spare", "sw-1", 1), "spare")),
            ["a drop and an uplink on one port"] = (RuleCodes.PortTaken, s => AlsoPatch(s, s.Patch("spare", "sw-1", 9), "spare")),
            ["a drop and an injector's data side on one port"] = (RuleCodes.PortTaken, s => AlsoPatch(s, s.Patch("spare", "sw-2", 1), "spare")),
            ["two drops on the one port of an injector"] = (RuleCodes.PortTaken, s => AlsoPatch(s, s.Patch("spare", "inj-1", 1), "spare")),
            ["a drop patched twice"] = (RuleCodes.DropTwice, s => AlsoPatch(s, s.Patch("K-01", "sw-1", 5))),
            ["a drop patched twice in a design like another"] = (RuleCodes.DropTwice, s => Second(s, d => d with { Patch = [s.Patch("K-01", "sw-1", 5), s.Patch("K-01", "sw-1", 6)] })),
            ["a patched drop that carries an uplink"] = (RuleCodes.DropTwice, s => AlsoLink(s, s.Link("sw-1", 5, "line", null) with { Drop = "K-01" })),
            ["two endpoints on one drop"] = (RuleCodes.DropShared, s => s.Endpoint("phone-4", "K-01")),
            ["an endpoint patched beside its drop"] = (RuleCodes.PatchedBesideDrop, s => AlsoPatch(s, s.Patch("phone-1", "sw-1", 5))),
            ["passive voltage at a port without"] = (RuleCodes.NoPassive, s => Switch(s, u => u with { PassivePorts = [7] })),
            ["a fan level the model does not have"] = (RuleCodes.NoSuchLevel, s => Switch(s, u => u with { Level = 3 })),
            ["a fan nobody knows"] = (RuleCodes.UnknownFan, s => Switch(s, u => u with { Fan = "draft" })),
            ["a fan made for fewer volts than the switch gives"] = (RuleCodes.FanVolts, s =>
            {
                s.Catalogue = s.Catalogue with
                {
                    Fans = new Dictionary<string, FanModel> { ["own"] = Models.Fan("own", 12), ["small"] = Models.Fan("small", 5) },
                    Switches = s.Catalogue.Switches.ToDictionary(pair => pair.Key, pair => pair.Value with { Fan = "own" }),
                };
                Switch(s, u => u with { Fan = "small" });
            }),
            ["uplinks in a ring of two with a third switch"] = (RuleCodes.UplinkRing, s => First(s, d => d with
            {
                Switches = [.. d.Switches, s.Switch("sw-3", "wren")],
                Uplinks = [s.Link("sw-1", 9, "sw-2", 9), s.Link("sw-2", 10, "sw-3", 9), s.Link("sw-3", 10, "sw-1", 10)],
            })),
            ["an uplink to the switch itself"] = (RuleCodes.UplinkRing, s => AlsoLink(s, s.Link("sw-1", 5, "sw-1", 6))),
            ["more cords than ports"] = (RuleCodes.UnitFull, s => First(s, d => d with { Patch = [.. Enumerable.Range(1, 12).Select(n => s.Patch("K-01", "sw-1", n))] })),
            ["more data cords than an injector has ports"] = (RuleCodes.UnitFull, s => Injector(s, i => i with { From = [new("sw-2", 3), new("sw-2", 4)] })),
            ["modules for two kinds of fibre"] = (RuleCodes.ModulesDiffer, s => Link(s, u => u with { Module = "bead", FarModule = "pearl" })),
            ["modules of two speeds"] = (RuleCodes.ModulesDiffer, s =>
            {
                s.Catalogue = s.Catalogue with { Modules = new Dictionary<string, ModuleModel>(s.Catalogue.Modules) { ["fast"] = Models.Module("fast", "multimode", 850, speed: 1e10) } };
                Link(s, u => u with { Module = "bead", FarModule = "fast" });
            }),
            ["two modules of one colour on a single fibre"] = (RuleCodes.ModulesDiffer, s => Link(s, u => u with { Module = "red" })),
            ["a module in a port for plugs"] = (RuleCodes.ModuleNotForPort, s => AlsoLink(s, s.Link("sw-1", 5, "line", null) with { Module = "bead" })),
            ["a module faster than its port"] = (RuleCodes.ModuleNotForPort, s =>
            {
                s.Catalogue = s.Catalogue with { Modules = new Dictionary<string, ModuleModel>(s.Catalogue.Modules) { ["fast"] = Models.Module("fast", "multimode", 850, speed: 1e10) } };
                Link(s, u => u with { Module = "fast" });
            }),
            ["a module for light on a copper drop"] = (RuleCodes.OtherCable, s => OnDrop(s, "fern", u => u with { Module = "bead" })),
            ["a module for single mode on multimode"] = (RuleCodes.OtherCable, s => OnDrop(s, "glass", u => u with { Module = "pearl" })),
            ["an uplink of copper on fibre"] = (RuleCodes.OtherCable, s => OnDrop(s, "glass", u => u with { Media = "copper" })),
            ["a direct cord on a drop"] = (RuleCodes.OtherCable, s => OnDrop(s, "fern", u => u with { Media = "direct" })),
            ["a run of copper and fibre"] = (RuleCodes.MixedRun, s => s.Drops.Change(0, d => d with { Pieces = [s.Piece(20), s.Piece(20) with { Cable = "glass" }] })),
            ["a listener outside the room"] = (RuleCodes.OutsideSpace, s => s.Listeners.Change(0, l => l with { Spot = s.At(6.2, 1, 1) })),
            ["a unit outside the room"] = (RuleCodes.OutsideSpace, s => Injector(s, i => i with { Standing = new("store", s.At(1, 1, 2.8), null) })),
            ["a rack taller than its room"] = (RuleCodes.RackTooTall, s => s.Racks.Change(0, r => r with { Height = Made.Of(new RackUnits(61)) })),
            ["a unit above its rack"] = (RuleCodes.OutsideRack, s => Switch(s, u => u with { Model = "finch", Standing = new("A", null, 12) })),
            ["a unit below its rack"] = (RuleCodes.OutsideRack, s => Switch(s, u => u with { Standing = new("A", null, 0) })),
            ["two units in one place"] = (RuleCodes.UnitsOverlap, s => Switch(s, u => u with { Standing = new("A", null, 2) })),
            ["a room without height"] = (RuleCodes.NoExtent, s => s.Spaces.Change(1, p => p with { Size = p.Size! with { Value = new(4, 3, 0) } })),
            ["a conduit without inside"] = (RuleCodes.NoExtent, s => s.Pathways.Change(0, p => p with { Inside = Made.Of(new Metres(0)) })),
            ["a length below nothing"] = (RuleCodes.NoExtent, s => s.Drops.Change(0, d => d with { CordAtPanel = s.Piece(-2) with { By = null } })),
            ["a range the wrong way round"] = (RuleCodes.RangeReversed, s => s.Pathways.Change(0, p => p with { Ambient = p.Ambient! with { Written = "33..24 °C" } })),
            ["a recorder of what is no endpoint"] = (RuleCodes.UnknownRecorded, s => s.Endpoints.Change(0, e => e with { Recorder = new(2, null, 0, null, null, null, ["phone-9"], s.Here()) })),
            ["a recorder with nothing but parity"] = (RuleCodes.ParityTakesAll, s => s.Endpoints.Change(0, e => e with { Recorder = new(2, null, 2, null, null, null, [], s.Here()) })),
            ["more failed in hot places than in all"] = (RuleCodes.HotBeyondAll, s => s.Fleet.Add(new("wren", 9, Made.Of(new Seconds(1e9)), 2, null, 3, 0, null, null, s.Here()))),
            ["more service in hot places than in all"] = (RuleCodes.HotBeyondAll, s => s.Fleet.Add(new("wren", 9, Made.Of(new Seconds(1e9)), 2, Made.Of(new Seconds(2e9)), 1, 0, null, null, s.Here()))),
            ["an uplink to a line that is not surveyed"] = (RuleCodes.UnknownLine, s => s.Lines.Add(new("gate", null, null, null, s.Here()))),
            ["a fleet of no model"] = (RuleCodes.UnknownFleet, s => s.Fleet.Add(new("wern", 9, null, null, null, null, null, null, null, s.Here()))),
            ["something kept that is not there"] = (RuleCodes.UnknownKept, s => s.Policy = s.Policy with { Outage = new(null, ["phon"], null) }),
            ["something added that is no device"] = (RuleCodes.UnknownAdded, s => s.Policy = s.Policy with { Years = YearsPolicy.None with { Devices = [new("phon", Headroom.Domain.Jobs.Reserve.Fifth, s.Here())] } }),
            ["high priority switched off before low"] = (RuleCodes.ShedOrder, s => First(s, d => d with
            {
                Standby = [d.Standby[0] with { Sheds = [new(Priority.High, Made.Of(new Seconds(300))), new(Priority.Low, Made.Of(new Seconds(900)))] }],
            })),
            ["high priority switched off and low never"] = (RuleCodes.ShedOrder, s => First(s, d => d with { Standby = [d.Standby[0] with { Sheds = [new(Priority.High, Made.Of(new Seconds(300)))] }] })),
            ["a unit stacked on nothing"] = (RuleCodes.StackedOn, s => Switch(s, u => u with { Standing = u.Standing with { On = "sw-9" } })),
            ["a unit stacked on itself"] = (RuleCodes.StackedOn, s => Switch(s, u => u with { Standing = u.Standing with { On = u.Id } })),
            ["two subnets that meet"] = (RuleCodes.RangesMeet, s => s.Addresses = Plan(s, Net(s, "a", 10, "phone", "10.9.0.0/25"), Net(s, "b", 20, "camera", "10.9.0.64/26"))),
            ["a subnet in what is used elsewhere"] = (RuleCodes.RangesMeet, s => s.Addresses = Plan(s, Net(s, "a", 10, "phone", "10.9.3.0/25"))),
            ["a subnet outside the range"] = (RuleCodes.RangeOutside, s => s.Addresses = Plan(s, Net(s, "a", 10, "phone", "10.8.0.0/25"))),
            ["two subnets of one number"] = (RuleCodes.VlanTwice, s => s.Addresses = Plan(s, Net(s, "a", 10, "phone"), Net(s, "b", 10, "camera"))),
            ["a kind in two subnets"] = (RuleCodes.KindTwice, s => s.Addresses = Plan(s, Net(s, "a", 10, "phone"), Net(s, "b", 20, "phone"))),
            ["a subnet for nowhere"] = (RuleCodes.UnknownSpace, s => s.Addresses = Plan(s, Net(s, "a", 10, "phone") with { In = ["ofice"] })),
            ["a pattern that names all alike"] = (RuleCodes.NamePattern, s => s.Addresses = Plan(s) with { Names = "{role}-{place}" }),
            ["a pattern with a part that is none"] = (RuleCodes.NamePattern, s => s.Addresses = Plan(s) with { Names = "{rolle}-{number}" }),
            ["a line in no group of tax"] = (RuleCodes.UnknownTax, s => s.Money = Terms(s, s.Line("lift", "EUR") with { Tax = "standrad" })),
            ["a line in another currency"] = (RuleCodes.TwoCurrencies, s => s.Money = Terms(s, s.Line("lift", "EUR"), s.Line("skip", "GBP"))),
            ["a change of a drop that is not there"] = (RuleCodes.UnknownChanged, s => First(s, d => d with { Building = new() { Drops = [new("K-99", s.Here()) { MatedPairs = 2 }] } })),
            ["a run over 90 m"] = (RuleCodes.LongRun, s => s.Drop("K-04", 90.1)),
            ["a run over 90 m in pieces"] = (RuleCodes.LongRun, s => s.Drops.Change(0, d => d with { Pieces = [s.Piece(50), s.Piece(41)] })),
            ["a run of nothing"] = (RuleCodes.ShortRun, s => s.Drop("K-04", 0.3)),
            ["a missing number"] = (RuleCodes.NumberingGap, s => s.Drop("K-05", 31)),
            ["one address twice"] = (RuleCodes.HardwareTwice, s => Hardware(s, "02:00:5e:10:00:01", "0200.5E10.0001")),
            ["an address with a letter too many"] = (RuleCodes.HardwareOdd, s => Hardware(s, "02:00:5e:10:00:0g", "02:00:5e:10:00:02")),
            ["a temperature over 60 degrees"] = (RuleCodes.OddTemperature, s => s.Pathways.Change(0, p => p with { Ambient = s.Degrees(82) })),
            ["a temperature under 40 degrees of frost"] = (RuleCodes.OddTemperature, s => s.Spaces.Change(0, p => p with { Temperatures = new Dictionary<string, Given<Celsius>> { ["winter"] = s.Degrees(-41) } })),
            ["an endpoint on a drop that is not patched"] = (RuleCodes.NotPatched, s => First(s, d => d with { Patch = [.. d.Patch.Skip(1)] })),
            ["a limit below the background"] = (RuleCodes.LimitBelowBackground, s => s.Spaces.Change(0, p => p with { Background = Made.Of(new SoundPressure(41)) })),
            ["endpoints counted and named"] = (RuleCodes.CountedAndNamed, s => s.Endpoints.Add(s.Endpoints[3] with { Id = "radio-2", CountedAs = "1 x radio", At = s.Here() })),
            ["a copper-clad cable"] = (RuleCodes.CopperClad, s => Piece(s, p => p with { Cable = "tinsel" })),
            ["a copper-clad cord"] = (RuleCodes.CopperClad, s => s.Drops.Change(0, d => d with { CordAtPanel = Site.Cord with { Cable = "tinsel" } })),
            ["a reading of the last century"] = (RuleCodes.OldReading, s => s.Readings.Add(s.Reading("K-01", 5) with { On = new(1999, 12, 31) })),
            ["one reading twice"] = (RuleCodes.ReadingTwice, s => s.Readings.Add(s.Reading("sw-1/2", 6.4))),
            ["a drop that ends where it starts"] = (RuleCodes.FromIsTo, s => s.Drops.Change(0, d => d with { To = d.From })),
            ["air warmer than the cable bears"] = (RuleCodes.CableTooWarm, s => Piece(s, p => p with { Ambient = s.Degrees(61) })),
            ["a price of a model that is not there"] = (RuleCodes.UnknownPriced, s => s.Prices.Add(new("no-such", new Given<Money>(new Money(9, "EUR"), "9 EUR", Origin.Unstated, null, s.Here()), null, null, null, s.Here()))),
            ["a pathway warmer than the cable bears"] = (RuleCodes.CableTooWarm, s => s.Pathways.Change(0, p => p with { Ambient = s.Degrees(61) })),
        };

    private static void First(Site site, Func<Design, Design> change) => site.Designs.Change(0, change);

    private static void Second(Site site, Func<Design, Design> change) => site.Designs.Change(1, change);

    private static void Switch(Site site, Func<PlacedSwitch, PlacedSwitch> change) =>
        First(site, d => d with { Switches = [change(d.Switches[0]), .. d.Switches.Skip(1)] });

    private static void Setting(Site site, Func<PowerSetting, PowerSetting> change) =>
        Switch(site, u => u with { Setting = change(u.Setting) });

    private static void Injector(Site site, Func<PlacedInjector, PlacedInjector> change) =>
        First(site, d => d with { Injectors = [change(d.Injectors[0])] });

    private static void Piece(Site site, Func<RunPiece, RunPiece> change) =>
        site.Drops.Change(0, d => d with { Pieces = [change(d.Pieces[0])] });

    private static void AlsoPatch(Site site, Patch patch, string? newDrop = null)
    {
        if (newDrop is not null)
            site.Drop(newDrop, 20);
        First(site, d => d with { Patch = [.. d.Patch, patch] });
    }

    private static void AlsoLink(Site site, Uplink link) => First(site, d => d with { Uplinks = [.. d.Uplinks!, link] });

    private static void Link(Site site, Func<Uplink, Uplink> change) => First(site, d => d with { Uplinks = [change(d.Uplinks![0]), .. d.Uplinks.Skip(1)] });

    private static void OnDrop(Site site, string cable, Func<Uplink, Uplink> change)
    {
        site.Drop("spare", 20);
        site.Drops[^1] = site.Drops[^1] with { Pieces = [site.Piece(20) with { Cable = cable }] };
        Link(site, u => change(u with { Drop = "spare" }));
    }

    private static void Reserve(Site site, string kind, Reserve reserve) =>
        site.Policy = site.Policy with { Reserves = new Dictionary<string, Reserve> { [kind] = reserve } };

    private static void Hardware(Site site, string one, string other)
    {
        site.Endpoints.Change(0, e => e with { Hardware = one });
        site.Endpoints.Change(1, e => e with { Hardware = other });
    }

    private static AddressPlan Plan(Site s, params Subnet[] subnets) => new(Range("10.9.0.0/22"), [Range("10.9.3.0/24")], null, null, null, null, subnets, s.Here());

    private static Subnet Net(Site s, string id, int vlan, string kind, string? range = null) =>
        new(id, vlan, [kind], [], null, null, range is null ? null : Range(range) with { At = s.Here() }, s.Here());

    private static Given<Ip4Range> Range(string text) => new(Ip4Range.Read(text, out _)!.Value, text, Origin.Unstated, null, Findings.Place.None);

    private static MoneyTerms Terms(Site s, params ExtraLine[] lines) =>
        new(null, null, null, [new("standard", Made.Of(new Share(0.19)))], false, TieRule.Away, null, s.Here()) { Lines = lines };
}
