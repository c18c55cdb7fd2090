using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>The ports of one switch from its first detection until nobody more comes up.</summary>
internal sealed class RestartRun
{
    private readonly SwitchPower _switch;
    private readonly IReadOnlyList<PoweredPort> _served;
    private readonly double[] _start;
    private readonly double[] _settled;
    private readonly RestartPort?[] _ports;
    private (double Seconds, bool Known) _now;
    private int _up;

    /// <summary>Prepares a switch that serves its first port at a moment.</summary>
    public RestartRun(SwitchPower s, (double Seconds, bool Known) ready)
    {
        (_switch, _served, _now) = (s, s.Counter.Served, ready);
        (_start, _settled, _ports) = (new double[_served.Count], new double[_served.Count], new RestartPort?[_served.Count]);
        for (var i = 0; i < _served.Count; i++)
            (_start[i], _settled[i]) = (s.StartReserve(_served[i]) ?? 0, s.SettledReserve(_served[i]) ?? 0);
    }

    /// <summary>In how many waves ports came up.</summary>
    public int Waves { get; private set; }

    /// <summary>Every port, in the order served.</summary>
    public IReadOnlyList<RestartPort> Ports => Array.ConvertAll(_ports, port => port!);

    /// <summary>One port that has power from a moment on.</summary>
    public static RestartPort Up(PoweredPort port, int wave, (double Seconds, bool Known) on) => port.Endpoint.Model.Boot is { } boot
        ? new(port, wave, on.Seconds, on.Seconds + boot.Value.Value, on.Known, on.Known)
        : new(port, wave, on.Seconds, on.Seconds, on.Known, false);

    /// <summary>Wave after wave, as far as the setting goes.</summary>
    public void ToTheEnd()
    {
        // Where the first in line does not fit and stops all behind it, the first round brings nobody up, but the next one may.
        for (var first = true; (Wave(first) || first) && _switch.Setting.Retries && _up < _served.Count; first = false)
            Settle();

        for (var i = 0; i < _ports.Length; i++)
            _ports[i] ??= new(_served[i], 0, 0, 0, false, false);
    }

    private bool Wave(bool first)
    {
        var before = _up;
        var reserved = Reserved();
        // All are detected at the same time, then classed and switched on one after the other, so that their inputs charge in turn.
        var slot = _now.Seconds + StartUp.DetectionSeconds;
        for (var i = 0; i < _served.Count; i++)
        {
            if (_ports[i] is not null)
                continue;
            if (_switch.BudgetWatts is { } budget && reserved + _start[i] > budget + PortBudget.GuardWatts)
            {
                if (first && _switch.Setting.AtRefusal == AtRefusal.Stop)
                    break;
                continue;
            }

            reserved += _start[i];
            slot += StartUp.ClassificationSecondsMax;
            _ports[i] = Up(_served[i], Waves + 1, (slot, _now.Known));
            slot += RestartPeaks.InrushSeconds(_served[i]);
            _up++;
        }

        if (_up > before)
            Waves++;
        return _up > before;
    }

    private double Reserved()
    {
        var sum = 0.0;
        for (var i = 0; i < _settled.Length; i++)
            sum += _ports[i] is null ? 0 : _settled[i];
        return sum;
    }

    private void Settle()
    {
        foreach (var port in _ports)
        {
            if (port is not null)
                _now = (Math.Max(_now.Seconds, port.UpSeconds), _now.Known && port.UpKnown);
        }
    }
}
