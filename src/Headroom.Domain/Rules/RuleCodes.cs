using Headroom.Domain.Findings;

namespace Headroom.Domain.Rules;

/// <summary>The rules that make a job well-formed, in one table. A code never changes its meaning; below 100 nothing is worked out until it is mended.</summary>
public static class RuleCodes
{
    /// <summary>One id stands for two things.</summary>
    public static RuleCode DuplicateId { get; } = Wrong("RUL001", "One id stands for two things.");

    /// <summary>A patch names an id that is both a drop and an endpoint.</summary>
    public static RuleCode AmbiguousPatch { get; } = Wrong("RUL002", "A patch names an id that is both a drop and an endpoint.");

    /// <summary>A space is named that the job does not have.</summary>
    public static RuleCode UnknownSpace { get; } = Wrong("RUL010", "A space is named that the job does not have.");

    /// <summary>A unit stands in something that is neither a space nor a rack of the job.</summary>
    public static RuleCode UnknownStanding { get; } = Wrong("RUL011", "A unit stands in something that is neither a space nor a rack of the job.");

    /// <summary>A drop is named that the job does not have.</summary>
    public static RuleCode UnknownDrop { get; } = Wrong("RUL012", "A drop is named that the job does not have.");

    /// <summary>A pathway is named that the job does not have.</summary>
    public static RuleCode UnknownPathway { get; } = Wrong("RUL013", "A pathway is named that the job does not have.");

    /// <summary>A cable model is not in the catalogue.</summary>
    public static RuleCode UnknownCable { get; } = Wrong("RUL014", "A cable model is not in the catalogue.");

    /// <summary>An endpoint model is not in the catalogue.</summary>
    public static RuleCode UnknownEndpointModel { get; } = Wrong("RUL015", "An endpoint model is not in the catalogue.");

    /// <summary>The model of a switch, injector or standby supply is not in the catalogue.</summary>
    public static RuleCode UnknownUnitModel { get; } = Wrong("RUL016", "The model of a switch, injector or standby supply is not in the catalogue.");

    /// <summary>A module model is not in the catalogue.</summary>
    public static RuleCode UnknownModule { get; } = Wrong("RUL017", "A module model is not in the catalogue.");

    /// <summary>A unit is fed by a standby supply that the design does not have.</summary>
    public static RuleCode UnknownStandby { get; } = Wrong("RUL018", "A unit is fed by a standby supply that the design does not have.");

    /// <summary>A switch has a supply that its model does not come with.</summary>
    public static RuleCode UnknownSupply { get; } = Wrong("RUL019", "A switch has a supply that its model does not come with.");

    /// <summary>A design is named that the job does not have.</summary>
    public static RuleCode UnknownDesign { get; } = Wrong("RUL020", "A design is named that the job does not have.");

    /// <summary>Something is patched that is neither a drop nor an endpoint.</summary>
    public static RuleCode UnknownPatched { get; } = Wrong("RUL021", "Something is patched that is neither a drop nor an endpoint.");

    /// <summary>A port of a unit is named that the design does not have.</summary>
    public static RuleCode UnknownUnit { get; } = Wrong("RUL022", "A port of a unit is named that the design does not have.");

    /// <summary>A priority is given to something that is neither an endpoint nor a drop.</summary>
    public static RuleCode UnknownPriority { get; } = Wrong("RUL023", "A priority is given to something that is neither an endpoint nor a drop.");

    /// <summary>A design takes away what the design it is like does not have.</summary>
    public static RuleCode NothingToRemove { get; } = Wrong("RUL024", "A design takes away what the design it is like does not have.");

    /// <summary>A reading was taken at something that the job does not have.</summary>
    public static RuleCode UnknownReadingPlace { get; } = Wrong("RUL025", "A reading was taken at something that the job does not have.");

    /// <summary>A reserve or growth is written for a kind of limit that does not exist.</summary>
    public static RuleCode UnknownReserve { get; } = Wrong("RUL026", "A reserve or growth is written for a kind of limit that does not exist.");

    /// <summary>A reserve is written in a unit that its kind of limit is not measured in.</summary>
    public static RuleCode ReserveUnit { get; } = Wrong("RUL027", "A reserve is written in a unit that its kind of limit is not measured in.");

    /// <summary>A unit has no model in the whole design.</summary>
    public static RuleCode UnitWithoutModel { get; } = Wrong("RUL028", "A unit has no model in the whole design.");

    /// <summary>A cabinet model is not in the catalogue.</summary>
    public static RuleCode UnknownCabinet { get; } = Wrong("RUL029", "A cabinet model is not in the catalogue.");

    /// <summary>Designs are like each other in a ring.</summary>
    public static RuleCode LikeRing { get; } = Wrong("RUL030", "Designs are like each other in a ring.");

    /// <summary>A port number is used that the model does not have.</summary>
    public static RuleCode NoSuchPort { get; } = Wrong("RUL040", "A port number is used that the model does not have.");

    /// <summary>A unit of several ports is named without a port number.</summary>
    public static RuleCode PortNotSaid { get; } = Wrong("RUL041", "A unit of several ports is named without a port number.");

    /// <summary>Two cords are on one port.</summary>
    public static RuleCode PortTaken { get; } = Wrong("RUL042", "Two cords are on one port.");

    /// <summary>A drop or endpoint is patched twice.</summary>
    public static RuleCode DropTwice { get; } = Wrong("RUL043", "A drop or endpoint is patched twice.");

    /// <summary>Two endpoints hang on one drop.</summary>
    public static RuleCode DropShared { get; } = Wrong("RUL044", "Two endpoints hang on one drop.");

    /// <summary>An endpoint that hangs on a drop is patched by its own id.</summary>
    public static RuleCode PatchedBesideDrop { get; } = Wrong("RUL045", "An endpoint that hangs on a drop is patched by its own id.");

    /// <summary>Passive voltage is switched on for a port that has none.</summary>
    public static RuleCode NoPassive { get; } = Wrong("RUL046", "Passive voltage is switched on for a port that has none.");

    /// <summary>A switch runs at a fan level that its model does not have.</summary>
    public static RuleCode NoSuchLevel { get; } = Wrong("RUL047", "A switch runs at a fan level that its model does not have.");

    /// <summary>Uplinks run in a ring.</summary>
    public static RuleCode UplinkRing { get; } = Wrong("RUL048", "Uplinks run in a ring.");

    /// <summary>More cords lead to a unit than it has ports.</summary>
    public static RuleCode UnitFull { get; } = Wrong("RUL049", "More cords lead to a unit than it has ports.");

    /// <summary>The modules at the two ends of an uplink do not understand one another.</summary>
    public static RuleCode ModulesDiffer { get; } = Wrong("RUL050", "The modules at the two ends of an uplink do not understand one another.");

    /// <summary>A module is in a port that does not take it.</summary>
    public static RuleCode ModuleNotForPort { get; } = Wrong("RUL051", "A module is in a port that does not take it.");

    /// <summary>An uplink runs on another kind of cable than its module or its words say.</summary>
    public static RuleCode OtherCable { get; } = Wrong("RUL052", "An uplink runs on another kind of cable than its module or its words say.");

    /// <summary>A run has pieces of copper and pieces of fibre.</summary>
    public static RuleCode MixedRun { get; } = Wrong("RUL053", "A run has pieces of copper and pieces of fibre.");

    /// <summary>A fan is not in the catalogue.</summary>
    public static RuleCode UnknownFan { get; } = Wrong("RUL055", "A fan is not in the catalogue.");

    /// <summary>A fan is put on more volts than it is made for.</summary>
    public static RuleCode FanVolts { get; } = Wrong("RUL056", "A fan is put on more volts than it is made for: a hazard, not an option.");

    /// <summary>A spot lies outside its space.</summary>
    public static RuleCode OutsideSpace { get; } = Wrong("RUL060", "A spot lies outside its space.");

    /// <summary>A rack is taller than its space.</summary>
    public static RuleCode RackTooTall { get; } = Wrong("RUL061", "A rack is taller than its space.");

    /// <summary>A unit reaches beyond its rack.</summary>
    public static RuleCode OutsideRack { get; } = Wrong("RUL062", "A unit reaches beyond its rack.");

    /// <summary>Two units fill the same rack unit.</summary>
    public static RuleCode UnitsOverlap { get; } = Wrong("RUL063", "Two units fill the same rack unit.");

    /// <summary>A size is nothing or less.</summary>
    public static RuleCode NoExtent { get; } = Wrong("RUL064", "A size is nothing or less.");

    /// <summary>A range runs from the greater to the smaller value.</summary>
    public static RuleCode RangeReversed { get; } = Wrong("RUL065", "A range runs from the greater to the smaller value.");

    /// <summary>A listener's ear lies in a wall, the floor or the ceiling.</summary>
    public static RuleCode EarInWall { get; } = Wrong("RUL066", "A listener's ear lies in a wall, the floor or the ceiling.");

    /// <summary>A wall does not lie between two spaces of its own.</summary>
    public static RuleCode WallBetween { get; } = Wrong("RUL067", "A wall does not lie between two different spaces, or two walls lie between the same two.");

    /// <summary>Door and gap are larger than the wall they are in.</summary>
    public static RuleCode DoorBeyondWall { get; } = Wrong("RUL068", "Door and gap are larger than the wall they are in.");

    /// <summary>A recorder keeps the pictures of something that is no endpoint.</summary>
    public static RuleCode UnknownRecorded { get; } = Wrong("RUL070", "A recorder keeps the pictures of something that is no endpoint.");

    /// <summary>No disk of a recorder is left for pictures.</summary>
    public static RuleCode ParityTakesAll { get; } = Wrong("RUL071", "No disk of a recorder is left for pictures.");

    /// <summary>More stood in hot places than there were.</summary>
    public static RuleCode HotBeyondAll { get; } = Wrong("RUL072", "More hours or failures are said of hot places than of all places together.");

    /// <summary>Something is to go on working in an outage that the job does not have.</summary>
    public static RuleCode UnknownKept { get; } = Wrong("RUL076", "Something is to go on working in an outage that the job does not have.");

    /// <summary>Ports of a higher priority are switched off before those of a lower one.</summary>
    public static RuleCode ShedOrder { get; } = Wrong("RUL077", "Ports of a higher priority are switched off before those of a lower one.");

    /// <summary>Something is to be added over the years that is neither a kind of endpoint nor a model.</summary>
    public static RuleCode UnknownAdded { get; } = Wrong("RUL078", "Something is to be added over the years that is neither a kind of endpoint nor a model of one.");

    /// <summary>A unit is stacked on one that is not there, or on itself.</summary>
    public static RuleCode StackedOn { get; } = Wrong("RUL080", "A unit is stacked on one that the design does not have, or in a ring.");

    /// <summary>Two ranges of addresses have addresses in common.</summary>
    public static RuleCode RangesMeet { get; } = Wrong("RUL081", "Two ranges of addresses have addresses in common.");

    /// <summary>A subnet lies outside the range that addresses are taken from.</summary>
    public static RuleCode RangeOutside { get; } = Wrong("RUL082", "A subnet lies outside the range that addresses are taken from.");

    /// <summary>Two subnets have one number on the switches.</summary>
    public static RuleCode VlanTwice { get; } = Wrong("RUL083", "Two subnets have one number on the switches.");

    /// <summary>Endpoints of one kind and space belong to two subnets.</summary>
    public static RuleCode KindTwice { get; } = Wrong("RUL084", "Endpoints of one kind belong to two subnets.");

    /// <summary>A pattern for names has a part that does not exist.</summary>
    public static RuleCode NamePattern { get; } = Wrong("RUL085", "The pattern for names has a part that does not exist, or gives every device the same name.");

    /// <summary>A group of tax is named that the offer does not have.</summary>
    public static RuleCode UnknownTax { get; } = Wrong("RUL086", "A group of tax is named that the offer does not have.");

    /// <summary>An offer holds amounts of two currencies.</summary>
    public static RuleCode TwoCurrencies { get; } = Wrong("RUL087", "An offer holds amounts of two currencies.");

    /// <summary>A design changes something of the building that the survey does not have.</summary>
    public static RuleCode UnknownChanged { get; } = Wrong("RUL088", "A design changes something of the building that the survey does not have.");

    /// <summary>A copper run is longer than the cabling standards allow.</summary>
    public static RuleCode LongRun { get; } = Ask("RUL101", "A copper run is longer than the cabling standards allow.");

    /// <summary>A run is hardly longer than nothing.</summary>
    public static RuleCode ShortRun { get; } = Ask("RUL102", "A run is hardly longer than nothing.");

    /// <summary>Numbers are missing in a series of ids.</summary>
    public static RuleCode NumberingGap { get; } = Ask("RUL103", "Numbers are missing in a series of ids.");

    /// <summary>Two endpoints have one hardware address.</summary>
    public static RuleCode HardwareTwice { get; } = Ask("RUL104", "Two endpoints have one hardware address.");

    /// <summary>A hardware address is not six pairs of hexadecimal digits.</summary>
    public static RuleCode HardwareOdd { get; } = Ask("RUL105", "A hardware address is not six pairs of hexadecimal digits.");

    /// <summary>A temperature is beyond what is met in buildings.</summary>
    public static RuleCode OddTemperature { get; } = Ask("RUL106", "A temperature is beyond what is met in buildings.");

    /// <summary>Endpoints hang on drops that the chosen design does not patch.</summary>
    public static RuleCode NotPatched { get; } = Ask("RUL107", "Endpoints hang on drops that the chosen design does not patch.");

    /// <summary>A listener's limit is below the background of the room.</summary>
    public static RuleCode LimitBelowBackground { get; } = Ask("RUL108", "A listener's limit is below the background of the room.");

    /// <summary>Endpoints of one model are written both by count and one by one.</summary>
    public static RuleCode CountedAndNamed { get; } = Ask("RUL109", "Endpoints of one model are written both by count and one by one.");

    /// <summary>A cable with a copper skin only is used.</summary>
    public static RuleCode CopperClad { get; } = Ask("RUL110", "A cable with a copper skin only is used.");

    /// <summary>A reading is dated before 2000.</summary>
    public static RuleCode OldReading { get; } = Ask("RUL111", "A reading is dated before 2000.");

    /// <summary>One reading is written twice.</summary>
    public static RuleCode ReadingTwice { get; } = Ask("RUL112", "One reading is written twice.");

    /// <summary>A drop ends in the space where it starts.</summary>
    public static RuleCode FromIsTo { get; } = Ask("RUL113", "A drop ends in the space where it starts.");

    /// <summary>The air around a cable is warmer than the cable may become.</summary>
    public static RuleCode CableTooWarm { get; } = Ask("RUL114", "The air around a cable is warmer than the cable may become.");

    /// <summary>A price is written for something that is no model.</summary>
    public static RuleCode UnknownPriced { get; } = Ask("RUL130", "A price is written for a model that is not in the catalogue.");

    /// <summary>An uplink leads to a line that the survey does not have.</summary>
    public static RuleCode UnknownLine { get; } = Ask("RUL140", "An uplink leads to a line that the survey does not have, while it has others.");

    /// <summary>The fleet has a model that is not in the catalogue.</summary>
    public static RuleCode UnknownFleet { get; } = Ask("RUL141", "The fleet has a model that is not in the catalogue.");

    /// <summary>All rules, by code.</summary>
    public static IReadOnlyList<RuleCode> All { get; } =
    [
        DuplicateId, AmbiguousPatch, UnknownSpace, UnknownStanding, UnknownDrop,
        UnknownPathway, UnknownCable, UnknownEndpointModel, UnknownUnitModel, UnknownModule,
        UnknownStandby, UnknownSupply, UnknownDesign, UnknownPatched, UnknownUnit,
        UnknownPriority, NothingToRemove, UnknownReadingPlace, UnknownReserve, ReserveUnit,
        UnitWithoutModel, UnknownCabinet, LikeRing, NoSuchPort, PortNotSaid, PortTaken,
        DropTwice, DropShared, PatchedBesideDrop, NoPassive, NoSuchLevel,
        UplinkRing, UnitFull, ModulesDiffer, ModuleNotForPort, OtherCable, MixedRun, UnknownFan, FanVolts, OutsideSpace, RackTooTall, OutsideRack,
        UnitsOverlap, NoExtent, RangeReversed, EarInWall, WallBetween, DoorBeyondWall, UnknownRecorded, ParityTakesAll, HotBeyondAll, UnknownKept, ShedOrder, UnknownAdded,
        StackedOn, RangesMeet, RangeOutside, VlanTwice, KindTwice, NamePattern, UnknownTax, TwoCurrencies, UnknownChanged, LongRun, ShortRun,
        NumberingGap, HardwareTwice, HardwareOdd, OddTemperature, NotPatched,
        LimitBelowBackground, CountedAndNamed, CopperClad, OldReading, ReadingTwice,
        FromIsTo, CableTooWarm, UnknownPriced, UnknownLine, UnknownFleet,
    ];

    private static RuleCode Wrong(string code, string meaning) => new(code, Severity.Error, meaning);

    private static RuleCode Ask(string code, string meaning) => new(code, Severity.Question, meaning);
}
