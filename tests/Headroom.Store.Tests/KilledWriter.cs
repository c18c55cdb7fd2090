using System.Globalization;
using System.Runtime.CompilerServices;

namespace Headroom.Store.Tests;

/// <summary>A process that saves and saves until it is killed. It is this test program itself, started with a variable that names the store.</summary>
internal static class KilledWriter
{
    public const string Variable = "HEADROOM_TEST_WRITER";
    public const string Job = "barn";

#pragma warning disable CA2255 // The one place before any runner of tests has begun.
    [ModuleInitializer]
    internal static void Begin()
#pragma warning restore CA2255
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } folder)
            Write(folder);
    }

    // What a revision holds, so that it can be told afterwards whether it is whole.
    public static string TextOf(int number) => string.Concat(Enumerable.Repeat(number.ToString(CultureInfo.InvariantCulture) + "\n", 2000));

    private static void Write(string folder)
    {
        using var store = JobStore.Open(new(folder), TimeProvider.System);
        for (var head = store.Find(Job)!.Head; ; head++)
        {
            var saved = store.Save(Job, head, ("Barn", JobText.Of(TextOf(head + 1))), new("writer", $"{head + 1}"));
            // Acknowledged is what was told to somebody.
            Console.Out.WriteLine(saved.Revision!.Number.ToString(CultureInfo.InvariantCulture));
            Console.Out.Flush();
        }
    }
}
