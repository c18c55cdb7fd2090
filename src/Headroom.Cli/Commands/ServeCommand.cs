using System.CommandLine;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Headroom.Desk;
using Headroom.Store;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom serve</c>: the whole job in pages, in a browser on this machine.</summary>
internal static class ServeCommand
{
    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand("serve", "Serves the jobs of the store as pages, for a browser on this machine", "", "headroom serve", "headroom serve --data jobs --urls http://127.0.0.1:5480")
        {
            Notes = ["It is served on this machine only, without a password, until Ctrl-C. docs/desk.md shows the pages, docs/store.md what is kept."],
        };
        new WordArgument("no word", 0, 0).AddTo(command);
        var data = new ValueOption("--data", "DIR", $"the data folder; otherwise that of this user ({StorePlace.PostgresVariable} names a PostgreSQL server)");
        var urls = new ValueOption("--urls", "URL", $"the address on this machine; otherwise {DeskAddress.Usual}").Checked(given => DeskAddress.Read(given).Complaint);
        var by = new ValueOption("--by", "NAME", "who works at it; otherwise the name of this user");
        command.Add(data);
        command.Add(urls);
        command.Add(by);
        command.SetAction(parsed => Serve(new DeskSettings(StorePlace.Told(data.One(parsed)), DeskAddress.Read(urls.One(parsed) ?? DeskAddress.Usual).Address!, by.One(parsed) ?? Environment.UserName), desk));
        return command;
    }

    // In a method of its own, so that asking for help loads no web server.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Serve(DeskSettings settings, Desk desk)
    {
        using var stop = new CancellationTokenSource();
        using var pressed = PosixSignalRegistration.Create(PosixSignal.SIGINT, End);
        using var ended = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        try
        {
            DeskHost.Run(settings, Told, stop.Token).GetAwaiter().GetResult();
            return ExitCode.NothingShort;
        }
        catch (StoreException reason)
        {
            return Refuse(desk, reason.Message);
        }
        catch (IOException reason)
        {
            return Refuse(desk, $"{settings.Address} cannot be served ({reason.Message.TrimEnd('.')}); see whether headroom runs there already, or give another address with --urls");
        }

        void Told(string address)
        {
            desk.Out.WriteLine($"The desk is at {address}  (Ctrl-C ends it)");
            desk.Out.Flush();
        }

        void End(PosixSignalContext signal)
        {
            signal.Cancel = true;
            stop.Cancel();
        }
    }

    private static int Refuse(Desk desk, string reason)
    {
        desk.Err.WriteLine($"headroom: {reason}");
        return ExitCode.NotWorked;
    }
}
