using Held = Glazewright.Design.Program.CompiledProgram.CurtainAt;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>Drying, fogging and the curtain's wishes.</summary>
internal ref partial struct StepRun
{
    private const int DriesBelowVapour = 950; // outside air dries while it holds less than this share of the vapour inside, 0.1 %
    private const int CurtainOpen = 0;
    private const int CurtainWarm = 1;
    private const int CurtainShade = 2;
    private const int CurtainDark = 3;

    /// <summary>How long a new wish must last before the curtain follows it, ms: our choice against hunting under passing clouds.</summary>
    private const int CurtainDelayMs = 300_000;

    /// <summary>How long a turn waits at most for the outside air to flow, ms: a louver's travel and whoever keeps it shut, our choice.</summary>
    private const int LongestWaitForAirMs = 300_000;

    /// <summary>Whether it is too wet, whether outside air helps, and whether a purge runs: known before heat is asked for.</summary>
    private void FindDrying()
    {
        ref readonly CompiledProgram.HumidityPart h = ref _p.HumidityRef;
        if (_humidity == Missing || _targetHumidity <= 0)
        {
            SetX(Extra.Drying, 0);
            SetX(Extra.Fogging, 0);
            SetX(Extra.PurgeMs, 0);
            return;
        }

        int dryAt = _targetHumidity + h.DryAbove;
        // Wet is wet in any cold: the curtain's gap dries against the cold cover when outside air must stay out.
        _wet = X(Extra.Drying) != 0 ? _humidity > dryAt - h.DryDeadband : _humidity > dryAt;
        SetX(Extra.Drying, _wet ? 1 : 0);
        _vapourShare = _wet ? VapourShare() : Missing;
        bool helps = _wet && h.DriesByOutsideAir && _outside != Missing && _vapourShare < DriesBelowVapour;
        bool mild = helps && _outside >= h.DryOnlyAboveOutside;
        if (h.PurgeOnMs > 0)
        {
            AskPurge(in h, helps && !mild && _inside != Missing);
        }

        _isMild = mild;
        _heatAt += helps && (mild || h.PurgeOnMs > 0) ? h.DryHeat : 0;
    }

    /// <summary>
    /// Outside air for a while, counted from when it flows, for a louver takes its time; then heat for a while. One that has flowed keeps its pause, so that they never follow each other closer;
    /// one that is kept from flowing gives its turn up.
    /// </summary>
    private void AskPurge(in CompiledProgram.HumidityPart h, bool may)
    {
        int before = X(Extra.PurgeMs), since = before; // below nothing: what it has waited for its air
        _purges = may && since < h.PurgeOnMs && _inside > _heatAt - h.PurgeLeastBelow;
        if (since <= 0)
        {
            since = !_purges ? 0 : Flows(h.Purging) ? _dt : since - _dt < -LongestWaitForAirMs ? h.PurgeOnMs : since - _dt;
        }
        else
        {
            since = ProgramInterpreter.Later(_purges ? since : Math.Max(since, h.PurgeOnMs), _dt);
            since = since >= h.PurgeMs ? 0 : since;
        }

        SetX(Extra.PurgeMs, since);
        if (_purges || before > 0)
        {
            // The air flows as soon as the louver moves.
            Due(_purges && since <= 0 ? 1 : _purges ? h.PurgeOnMs - Math.Max(0, before) : h.PurgeMs - before);
        }
    }

    private readonly bool Flows(in CompiledProgram.Settings settings)
    {
        foreach (int actuator in settings.Actuators)
        {
            if (At(actuator, CompiledProgram.Level) <= 0)
            {
                return false;
            }
        }

        return true;
    }

    private void AskHumidity()
    {
        ref readonly CompiledProgram.HumidityPart h = ref _p.HumidityRef;
        if (_humidity == Missing || _targetHumidity <= 0)
        {
            return;
        }

        if (_purges)
        {
            AskAll(h.Purging, ReasonCode.Purging, _humidity, _targetHumidity + h.DryAbove, _vapourShare);
        }
        else if (_wet && (!h.DriesByOutsideAir || _isMild))
        {
            AskAll(h.Drying, ReasonCode.Drying, _humidity, _targetHumidity + h.DryAbove, _vapourShare);
        }

        int fogAt = _targetHumidity - h.FogBelow;
        bool fogging = h.Fogging.Actuators.Length > 0 && (X(Extra.Fogging) != 0 ? _humidity < fogAt + h.FogDeadband : _humidity < fogAt);
        SetX(Extra.Fogging, fogging ? 1 : 0);
        if (fogging)
        {
            AskAll(h.Fogging, ReasonCode.Fogging, _humidity, fogAt, h.FogCeiling);
        }

        LookOut(in h, fogAt, fogging);
        if (_purges)
        {
            _soon.Colder = Math.Min(_soon.Colder, Math.Max(1, _inside - _heatAt + h.PurgeLeastBelow));
        }

        if (_wet && h.DriesByOutsideAir)
        {
            LookOutForVapour();
        }
    }

    /// <summary>How far humidity or temperature must go for the outside air to become drier than the air inside, or no more; each of them alone.</summary>
    private void LookOutForVapour()
    {
        long share = _vapourShare;
        if (share == Missing || share >= 100_000)
        {
            return;
        }

        // Vapour inside at which the outside air stands at the limit, over the vapour inside now, 0.1 %; a kelvin is about 6.2 % of it.
        int off = (int)(share * 1000 / DriesBelowVapour) - 1000;
        int percents = Math.Max(1, Math.Abs(off) * Math.Max(_humidity, 1) / 1000), kelvins = Math.Max(1, Math.Abs(off) * 100 / 62);
        if (off >= 0)
        {
            (_soon.Damper, _soon.Warmer) = (Math.Min(_soon.Damper, percents), Math.Min(_soon.Warmer, kelvins));
        }
        else
        {
            (_soon.Drier, _soon.Colder) = (Math.Min(_soon.Drier, percents), Math.Min(_soon.Colder, kelvins));
        }
    }

    /// <summary>How much damper or drier it must get for drying or fog to begin or end.</summary>
    private void LookOut(in CompiledProgram.HumidityPart h, int fogAt, bool fogging)
    {
        int dryAt = _targetHumidity + h.DryAbove;
        int up = _wet ? int.MaxValue : dryAt - _humidity + 1, down = _wet ? _humidity - dryAt + h.DryDeadband : int.MaxValue;
        if (h.Fogging.Actuators.Length > 0)
        {
            up = fogging ? Math.Min(up, Math.Min(fogAt + h.FogDeadband, _humidity < h.FogCeiling ? h.FogCeiling : int.MaxValue) - _humidity) : up;
            down = fogging ? down : Math.Min(down, _humidity - fogAt + 1);
        }

        (_soon.Damper, _soon.Drier) = (Math.Max(1, up), Math.Max(1, down));
    }

    /// <summary>Vapour of the outside air over that inside, 0.1 %; without an outside humidity the worst is taken.</summary>
    private readonly int VapourShare()
    {
        if (_outside == Missing || _inside == Missing)
        {
            return Missing;
        }

        int humidity = Read(Reading.OutsideHumidity, 0, 1300);
        long outside = (long)VapourTable.SaturationPa(_outside) * (humidity == Missing ? 1000 : Math.Min(humidity, 1000));
        long inside = (long)VapourTable.SaturationPa(_inside) * Math.Max(_humidity, 1);
        return (int)Math.Min(100_000, outside * 1000 / Math.Max(1, inside));
    }

    private void AskCurtain()
    {
        if (_p.Curtain is { } first)
        {
            AskCurtain(first, Extra.Curtain, -1);
        }

        // The second waits with opening while the first still opens: the cold air above comes down once, in steps.
        if (_p.SecondCurtain is { } second)
        {
            bool waits = _p.Curtain is { } other && X(Extra.Curtain + Held.Mode) == CurtainOpen
                && (X(Extra.Curtain + Held.Target) > 0 || (At(other.Actuator, CompiledProgram.Level) > 0 && At(other.Actuator, CompiledProgram.Hand) < 0));
            AskCurtain(second, Extra.SecondCurtain, waits ? _p.Curtain!.Actuator : -1);
        }
    }

    private void AskCurtain(CompiledProgram.CurtainPart c, int at, int waitsFor)
    {
        int mode = X(at + Held.Mode);
        int wished = WishedCurtain(c, mode);
        bool snow = c.HoldOpenOnSnow && _readings[(int)Reading.Snow] == 1;
        if (snow)
        {
            mode = CurtainOpen;
            SetX(at + Held.TimerMs, 0);
        }
        else if (wished == mode)
        {
            SetX(at + Held.TimerMs, 0);
        }
        else if (X(at + Held.TimerMs) >= CurtainDelayMs)
        {
            mode = wished;
            SetX(at + Held.TimerMs, 0);
        }
        else
        {
            SetX(at + Held.TimerMs, ProgramInterpreter.Later(X(at + Held.TimerMs), _dt));
        }

        SetX(at + Held.Mode, mode);
        bool outsideIsDark = mode != CurtainDark || (_light != Missing && _light < c.DrawBelowLight);
        int gap = X(Extra.Drying) != 0 && outsideIsDark ? c.Gap : 0;
        bool warms = false;
        if (c.WarmGap > 0)
        {
            int forHeat = GapForHeat(c, at, outsideIsDark && mode is CurtainWarm or CurtainDark);
            warms = forHeat > gap;
            gap = Math.Max(gap, forHeat);
        }

        int goal = mode switch { CurtainWarm or CurtainDark => 10_000 - gap, CurtainShade => c.ShadeLevel, _ => 0 };
        bool held = waitsFor >= 0 && goal < X(at + Held.Target) && mode == CurtainOpen && !snow;
        int target = held ? X(at + Held.Target) : Stepped(c, at, goal);
        ReasonCode reason = snow ? ReasonCode.CurtainForSnow
            : held ? ReasonCode.WaitsFor
            : warms ? ReasonCode.CurtainLetsHeatGo
            : target > goal ? ReasonCode.CurtainInSteps
            : mode == CurtainWarm ? ReasonCode.CurtainForWarmth
            : mode == CurtainShade ? ReasonCode.CurtainForShade
            : mode == CurtainDark ? ReasonCode.CurtainForDark
            : ReasonCode.Idle;
        (int a, int b, int third) = reason switch
        {
            ReasonCode.WaitsFor => (waitsFor, 0, 0),
            ReasonCode.CurtainInSteps => (target, c.OpenStep, Math.Max(0, c.OpenStepMs - X(at + Held.StepMs)) / 1000),
            ReasonCode.CurtainForWarmth => (_light, _outside, gap),
            ReasonCode.CurtainLetsHeatGo => (_inside - _warmAt, 10_000 - target, c.WarmGap),
            ReasonCode.CurtainForShade => (_light, _inside == Missing ? Missing : _inside - _coolAt, 0),
            ReasonCode.CurtainForDark => (_clock / 60_000, (MarkMs(c.DarkTo) + DayMs) % DayMs / 60_000, gap),
            _ => (0, 0, 0),
        };
        _want[c.Actuator] = target;
        _wanted = target > 0 ? _wanted | 1UL << c.Actuator : _wanted & ~(1UL << c.Actuator);
        _commands[c.Actuator] = new Command(0, (int)reason, a, b, third);
    }

    /// <summary>
    /// How far a drawn curtain opens for heat: on towards its most while it is too warm, as it is within the deadband, not at all below, without a
    /// reading, or with a heater asked for. It turns at most every five minutes, and not while another use of the curtain is waited for.
    /// </summary>
    private readonly int GapForHeat(CompiledProgram.CurtainPart c, int at, bool drawn)
    {
        int since = X(at + Held.HeatMs);
        if (!drawn)
        {
            SetX(at + Held.HeatMs, 0);
            return 0;
        }

        bool opens = since > 0;
        int past = _inside == Missing || X(Extra.HeatBusy) != 0 ? Missing : _inside - _warmAt - c.WarmPast;
        bool wished = past != Missing && past >= (opens ? -c.WarmDeadband + 1 : 0);
        if (wished != opens && Math.Abs(since) >= CurtainDelayMs && X(at + Held.TimerMs) == 0)
        {
            opens = wished;
            since = 0;
        }

        since = opens ? Math.Min(CurtainDelayMs, since + Math.Max(1, _dt)) : Math.Max(-CurtainDelayMs, since - _dt);
        SetX(at + Held.HeatMs, since);
        return !opens ? 0 : past >= 0 ? c.WarmGap : Math.Clamp(10_000 - X(at + Held.Target), 0, c.WarmGap);
    }

    private readonly int WishedCurtain(CompiledProgram.CurtainPart c, int mode)
    {
        if (c.Darkens && DayPart.Between((DayPart.Mark)c.DarkFrom.Kind, MarkMs(c.DarkFrom), (DayPart.Mark)c.DarkTo.Kind, MarkMs(c.DarkTo), DayMs).At(_clock, DayMs).IsDay)
        {
            return CurtainDark;
        }

        bool dark = _light != Missing
            ? _light < c.DrawBelowLight + (mode == CurtainWarm ? Math.Max(10, c.DrawBelowLight / 5) : 0)
            : _clock < _sunrise || _clock >= _sunset;
        bool cold = _outside == Missing || _outside < c.DrawBelowOutside + (mode == CurtainWarm ? 100 : 0);
        if (dark && cold)
        {
            return CurtainWarm;
        }

        int past = _inside == Missing ? Missing : _inside - _coolAt;
        bool sunny = _light != Missing && _light > c.ShadeAboveLight - (mode == CurtainShade ? c.ShadeAboveLight / 6 : 0);
        bool warm = past != Missing && past >= c.ShadeAboveInside - (mode == CurtainShade ? 100 : 0);
        return sunny && warm && c.ShadeLevel > 0 ? CurtainShade : CurtainOpen;
    }

    /// <summary>Drawing goes straight to the goal; opening goes in steps with waits, so that the cold air above never falls on the crop at once.</summary>
    private readonly int Stepped(CompiledProgram.CurtainPart c, int at, int goal)
    {
        int target = X(at + Held.Target);
        int waited = X(at + Held.StepMs);
        if (goal >= target)
        {
            target = goal;
            waited = c.OpenStepMs;
        }
        else
        {
            while (waited >= c.OpenStepMs && target > goal)
            {
                target = Math.Max(goal, target - c.OpenStep);
                waited -= Math.Max(1, c.OpenStepMs);
            }

            waited = ProgramInterpreter.Later(Math.Max(0, waited), _dt);
        }

        SetX(at + Held.Target, target);
        SetX(at + Held.StepMs, waited);
        return target;
    }
}
