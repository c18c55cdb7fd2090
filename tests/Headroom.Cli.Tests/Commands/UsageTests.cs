namespace Headroom.Cli.Tests.Commands;

public sealed class UsageTests
{
    public static TheoryData<string, string> Slips => new()
    {
        { "stduy job.yaml", "headroom: there is no command 'stduy'; did you mean study?" },
        { "--verbose", "headroom: a command comes first, then options; '--verbose' is none" },
        { "--versoin", "headroom: a command comes first, then options; '--versoin' is none; did you mean --version?" },
        { "study", "headroom: study needs a JOB" },
        { "study a b", "headroom: study takes a JOB and no more; 'b' is too much" },
        { "study a --fromat json", "headroom: study has no option --fromat; did you mean --format?" },
        { "study a --fromat=json", "headroom: study has no option --fromat; did you mean --format?" },
        { "study a -x", "headroom: study has no option -x" },
        { "study a --format xml", "headroom: --format is text, json or csv, not 'xml'" },
        { "study a --format jsn", "headroom: --format is text, json or csv, not 'jsn'; did you mean json?" },
        { "study a --format json --format csv", "headroom: --format was given 2 times; once is enough" },
        { "study a --format", "headroom: --format needs a value: text|json|csv" },
        { "study a --format=", "headroom: --format needs a value: text|json|csv" },
        { "study a --units metrc", "headroom: --units is metric or imperial, not 'metrc'; did you mean metric?" },
        { "study a --on 25.11.2026", "headroom: --on is a day written as 2026-11-25, not '25.11.2026'" },
        { "study a --on 2026-02-30", "headroom: --on is a day written as 2026-11-25, not '2026-02-30'" },
        { "study a --count sw-1=clas", "headroom: --count is class, port-limit, negotiated, measured or autoclass, not 'clas'; did you mean class?" },
        { "study a --count =class", "headroom: --count wants a switch before '=': sw-1=class" },
        { "study a --only powr", "headroom: --only is power, cabling, heat, sound, standby, traffic, failure, reliability, racking, addressing or money, not 'powr'; did you mean power?" },
        { "study a --strict --design", "headroom: --design needs a value: ID" },
        { "explain a", "headroom: explain needs a JOB and at least one ENTRY" },
        { "explain a b --format csv", "headroom: --format is text or json, not 'csv'" },
        { "check", "headroom: check needs a JOB" },
        { "check a --strict", "headroom: check has no option --strict" },
        { "catalogue", "headroom: catalogue is followed by list, show or check" },
        { "catalogue shw", "headroom: catalogue is followed by list, show or check, not 'shw'; did you mean show?" },
        { "catalogue list swiches", "headroom: a kind is switches, injectors, endpoints, cables, fibres, modules, standby, batteries, fans or cabinets, not 'swiches'; did you mean switches?" },
        { "catalogue show", "headroom: catalogue show needs a MODEL" },
        { "serve --urls http://0.0.0.0:80", "headroom: --urls may only be an address of this machine (127.0.0.1, [::1] or localhost), not '0.0.0.0': the desk has no passwords, so whoever reached it there could read and change every job" },
        { "serve --urls 5480", "headroom: --urls is an address such as http://127.0.0.1:5480, not '5480'" },
        { "serve --dat x", "headroom: serve has no option --dat; did you mean --data?" },
        { "store", "headroom: store is followed by list, import, export, copy or check" },
        { "store lst", "headroom: store is followed by list, import, export, copy or check, not 'lst'; did you mean list?" },
        { "store import", "headroom: store import needs a JOB" },
        { "store import a b --as c", "headroom: --as is for one JOB" },
        { "store export", "headroom: store export needs an ID" },
        { "store export a --revision 0", "headroom: --revision is the number of a revision, from 1, not '0'" },
        { "store copy", "headroom: store copy needs a FILE" },
        { "new a b", "headroom: new takes one FILE and no more; 'b' is too much" },
        { "schema", "headroom: schema needs job, catalogue, firm, ledger, reckon, compare, jobs, record, remedies, restart, years, acceptance, plan or turn" },
        { "schema jb", "headroom: schema is job, catalogue, firm, ledger, reckon, compare, jobs, record, remedies, restart, years, acceptance, plan or turn, not 'jb'; did you mean job?" },
        { "reckon --list far-end-volts", "headroom: --list stands alone; 'far-end-volts' is too much" },
        { "reckon", "headroom: reckon needs a SUM; 'headroom reckon --list' lists all" },
        { "reckon far-end-vlts", "headroom: there is no sum 'far-end-vlts'; did you mean far-end-volts?" },
        { "reckon class-of-draw draw 13 V", "headroom: draw is '13 V'; a power in W, mW or kW; did you mean 'W'?" },
        { "reckon class-of-draw --darw", "headroom: reckon has no option --darw" },
        { "compare", "headroom: compare needs a JOB and two designs" },
        { "compare a b", "headroom: compare needs a JOB and two designs, or --swap MODEL=OTHER" },
        { "compare a b c --swap x=y", "headroom: compare takes a JOB and one DESIGN with --swap" },
        { "compare a --swap x", "headroom: --swap is a model, = and the model in its place: wren-b=redshank, not 'x'" },
        { "compare a --swap x=x", "headroom: --swap puts x in its own place" },
        { "draw a b", "headroom: draw takes a JOB and no more; 'b' is too much" },
        { "draw a --out b --format text", "headroom: draw has no option --format" },
        { "papers a --paper folio", "headroom: --paper is A4 or Letter, not 'folio'" },
        { "labels", "headroom: labels needs a JOB" },
        { "labels a --first 0", "headroom: --first is a whole number from 1, not '0'" },
        { "labels a --of ports,cabels", "headroom: --of is ports, cables, units or closets, not 'cabels'; did you mean cables?" },
        { "labels a --ends flga", "headroom: --ends is wrap or flag, not 'flga'; did you mean flag?" },
        { "labels a --code qrr", "headroom: --code is fit, qr, code-128 or none, not 'qrr'; did you mean qr?" },
        { "workbook", "headroom: workbook needs a JOB" },
        { "workbook a --csv", "headroom: --csv needs a value: DIR" },
        { "amend a", "headroom: amend needs a JOB and a FILE" },
        { "amend a b --as drop", "headroom: --as is drops, endpoints or patching, not 'drop'; did you mean drops?" },
        { "help stduy", "headroom: there is no command 'stduy'; did you mean study?" },
    };

    [Theory, MemberData(nameof(Slips))]
    public void A_slip_of_the_typing_is_refused_with_what_is_right(string typed, string complaint)
    {
        var result = TestDesk.Run(typed.Split(' '));
        var lines = result.Err.Split('\n');
        Assert.Equal((2, "", complaint, 3), (result.ExitCode, result.Out, lines[0], lines.Length));
        Assert.Matches("^'headroom .*--help' says what there is\\.$", lines[1]);
    }

    [Fact]
    public void All_slips_are_said_in_one_go()
    {
        var result = TestDesk.Run(["study", "a", "--format", "xml", "--on", "today", "--unit"]);
        Assert.Equal(4, result.Err.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void Without_a_command_the_help_is_a_message_and_no_result()
    {
        var result = TestDesk.Run([]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("headroom study", result.Err, StringComparison.Ordinal);
    }
}
