using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests;

/// <summary>The documentation of the sums keeps its promises: a unit on every figure, a source on every formula.</summary>
public sealed partial class XmlDocsTests
{
    private static readonly Assembly Engineering = typeof(ConstantPowerLoad).Assembly;

    private static readonly Dictionary<string, XElement> Docs = XDocument.Load(Path.ChangeExtension(Engineering.Location, ".xml"))
        .Descendants("member").ToDictionary(member => member.Attribute("name")!.Value);

    private static IEnumerable<MethodBase> Documented => Engineering.GetExportedTypes()
        .Where(type => !type.IsSubclassOf(typeof(Delegate)))
        .SelectMany(type => type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .OfType<MethodBase>()
        .Where(method => method is ConstructorInfo || (!method.IsSpecialName && !method.IsDefined(typeof(CompilerGeneratedAttribute))))
        .Where(method => method.GetParameters().Any(IsFigure));

    [Fact]
    public void Every_figure_that_goes_into_a_member_has_its_unit_in_brackets() => Assert.Empty(
        from method in Documented
        from parameter in method.GetParameters()
        where IsFigure(parameter) && !Unit().IsMatch(Text(method, parameter))
        select $"{DocId.Of(method)}: {parameter.Name}");

    [Fact]
    public void Every_formula_names_its_source() => Assert.Empty(
        from method in Documented
        where method.IsStatic && !(Docs.TryGetValue(DocId.Of(method), out var doc) && doc.Value.Contains("Source:", StringComparison.Ordinal))
        select DocId.Of(method));

    [Fact]
    public void The_check_sees_the_members_it_is_about() => Assert.Multiple(
        () => Assert.Contains("M:Headroom.Engineering.Power.ConstantPowerLoad.Solve(System.Double,System.Double,System.Double)", Documented.Select(DocId.Of)),
        () => Assert.Contains(typeof(OperatingPoint), Documented.Select(method => method.DeclaringType)),
        () => Assert.All(Documented.Where(method => method is MethodInfo), method => Assert.Contains(DocId.Of(method), Docs.Keys)));

    // A double, an optional double, or a row of them; out parameters are answers.
    private static bool IsFigure(ParameterInfo parameter)
    {
        var type = parameter.ParameterType;
        return !parameter.IsOut && (type == typeof(double) || type == typeof(double[]) || type.GenericTypeArguments.Contains(typeof(double)));
    }

    private static string Text(MethodBase method, ParameterInfo parameter) =>
        Docs.GetValueOrDefault(DocId.Of(method))?.Elements("param").SingleOrDefault(param => param.Attribute("name")?.Value == parameter.Name)?.Value ?? "";

    [GeneratedRegex(@"\[[^\]]+\]")]
    private static partial Regex Unit();
}
