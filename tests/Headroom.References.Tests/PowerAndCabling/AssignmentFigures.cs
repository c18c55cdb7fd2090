using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class AssignmentFigures
{
    internal static Figure Work(Printed printed)
    {
        var highest = printed.Id switch { "A-1" => 3, "A-2" => 4, "A-4" => 6, _ => 8 };
        var classes = Enumerable.Range(0, 9);
        return printed.What switch
        {
            "class 0 reserved" => PoeClasses.SourceWatts(ClassAssignment.GrantedByEvents(1, 0)),
            "demoted, classes 0 to 8" => Figure.List(classes.Select(cls => ClassAssignment.IsDemoted(ClassAssignment.Granted(highest, cls)!.Value, cls))),
            var what when what.Contains("port of class", StringComparison.Ordinal) =>
                Figure.List(classes.Select(cls => ClassAssignment.Granted(what[^1] - '0', cls))),
            var what when what.Contains(" event", StringComparison.Ordinal) =>
                Figure.List(classes.Select(cls => ClassAssignment.GrantedByEvents(what[what.IndexOf(" event", StringComparison.Ordinal) - 1] - '0', cls))),
            _ => PrintedTables.Nothing(printed),
        };
    }
}
