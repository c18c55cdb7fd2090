using System.Reflection;

namespace Headroom.Engineering.Tests;

/// <summary>The name under which the compiler writes a member's documentation.</summary>
internal static class DocId
{
    internal static string Of(MethodBase method)
    {
        var name = method is ConstructorInfo ? "#ctor" : method.Name;
        var generic = method.IsGenericMethod ? $"``{method.GetGenericArguments().Length}" : "";
        var parameters = string.Join(',', method.GetParameters().Select(parameter => Of(parameter.ParameterType)));
        return $"M:{method.DeclaringType!.FullName!.Replace('+', '.')}.{name}{generic}{(parameters.Length == 0 ? "" : $"({parameters})")}";
    }

    private static string Of(Type type)
    {
        if (type.IsByRef)
            return Of(type.GetElementType()!) + "@";
        if (type.IsArray)
            return Of(type.GetElementType()!) + "[]";
        if (type.IsGenericParameter)
            return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        if (!type.IsGenericType)
            return type.FullName!.Replace('+', '.');
        var name = type.GetGenericTypeDefinition().FullName!;
        return $"{name[..name.IndexOf('`', StringComparison.Ordinal)].Replace('+', '.')}{{{string.Join(',', type.GetGenericArguments().Select(Of))}}}";
    }
}
