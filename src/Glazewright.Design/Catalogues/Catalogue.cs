using Glazewright.Design.Contracts;

namespace Glazewright.Design.Catalogues;

/// <summary>Climate equipment to choose from: a value. A job pins it by its hash and carries the entries it uses.</summary>
/// <param name="Fans">Exhaust fans.</param>
/// <param name="Louvers">Motor louvers.</param>
/// <param name="Pads">Wet pads.</param>
/// <param name="Fogs">Fog kinds.</param>
/// <param name="Heaters">Heaters.</param>
/// <param name="Curtains">Curtain cloths with their drive.</param>
/// <param name="Circulation">Circulation fans.</param>
/// <param name="Oscillating">Oscillating fans.</param>
/// <param name="PressureFans">Filter fans.</param>
/// <param name="Lamps">Lamps.</param>
/// <param name="Pipes">Hot-water pipe.</param>
/// <param name="Sha256">Hash of the text it was read from, lower-case hex.</param>
public sealed record Catalogue(
    EqList<FanEntry> Fans,
    EqList<LouverEntry> Louvers,
    EqList<PadEntry> Pads,
    EqList<FogEntry> Fogs,
    EqList<HeaterEntry> Heaters,
    EqList<CurtainEntry> Curtains,
    EqList<CirculationEntry> Circulation,
    EqList<OscillatingEntry> Oscillating,
    EqList<PressureFanEntry> PressureFans,
    EqList<LampEntry> Lamps,
    EqList<PipeEntry> Pipes,
    string Sha256)
{
    /// <summary>Every entry's id, in the catalogue's order.</summary>
    public IEnumerable<string> Ids =>
        [
            .. Fans.Select(e => e.Id), .. Louvers.Select(e => e.Id), .. Pads.Select(e => e.Id), .. Fogs.Select(e => e.Id),
            .. Heaters.Select(e => e.Id), .. Curtains.Select(e => e.Id), .. Circulation.Select(e => e.Id),
            .. Oscillating.Select(e => e.Id), .. PressureFans.Select(e => e.Id), .. Lamps.Select(e => e.Id), .. Pipes.Select(e => e.Id),
        ];
}

/// <summary>An exhaust fan.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="FrameM">Frame size, square, m.</param>
/// <param name="VoltageV">Voltage, V.</param>
/// <param name="Phases">1 or 3.</param>
/// <param name="StartA">Starting current, A.</param>
/// <param name="MassKg">Mass, kg.</param>
/// <param name="SoundDb">Sound at 1.5 m, dB(A).</param>
/// <param name="Points">Tested points by rising static pressure, at 1.2 kg/m³.</param>
public sealed record FanEntry(
    string Id,
    string Name,
    double DiameterM,
    double FrameM,
    double VoltageV,
    int Phases,
    double StartA,
    double MassKg,
    double SoundDb,
    EqList<Science.Flow.FanPoint> Points);

/// <summary>A motor louver.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="SizeM">Frame size, square, m.</param>
/// <param name="FreeFraction">Free share of the frame, blades fully open.</param>
/// <param name="DischargeCoefficient">On the free area.</param>
/// <param name="TravelS">Shut to open, s.</param>
/// <param name="MotorW">Motor, W.</param>
/// <param name="MassKg">Mass, kg.</param>
public sealed record LouverEntry(
    string Id, string Name, double SizeM, double FreeFraction, double DischargeCoefficient, double TravelS, double MotorW, double MassKg);

/// <summary>A wet pad.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="ThicknessM">Thickness, m.</param>
/// <param name="Kind">What it does to air by face speed.</param>
/// <param name="MostFaceMs">Face speed not to be passed in design, m/s.</param>
/// <param name="WaterM3PerSPerM">Water over the pad, m³/s for each metre of width.</param>
/// <param name="SumpMPerM2">Sump, m³ for each m² of pad.</param>
/// <param name="HeightsM">Heights it comes in, m.</param>
/// <param name="PumpHeadM">Head of its pump, m.</param>
/// <param name="PumpEfficiency">Wire to water.</param>
/// <param name="MassKgPerM2">Wet, kg/m².</param>
public sealed record PadEntry(
    string Id,
    string Name,
    double ThicknessM,
    Science.Flow.PadKind Kind,
    double MostFaceMs,
    double WaterM3PerSPerM,
    double SumpMPerM2,
    EqList<double> HeightsM,
    double PumpHeadM,
    double PumpEfficiency,
    double MassKgPerM2);

/// <summary>Fog of one pressure class.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="NozzleKgPerS">One nozzle, kg/s.</param>
/// <param name="PressurePa">Line pressure, Pa.</param>
/// <param name="EvaporatedFraction">Share that evaporates before it falls, in dry air.</param>
/// <param name="PumpEfficiency">Wire to water.</param>
public sealed record FogEntry(
    string Id, string Name, double NozzleKgPerS, double PressurePa, double EvaporatedFraction, double PumpEfficiency);

/// <summary>A heater.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="OutputW">Heat to the house, W.</param>
/// <param name="EfficiencyFraction">Output over gross fuel input.</param>
/// <param name="FanW">Its fan and controls, W electric.</param>
/// <param name="Sealed">Takes combustion air from outside.</param>
/// <param name="Electric">Electric resistance.</param>
/// <param name="ThrowM">Throw, m.</param>
/// <param name="MassKg">Mass, kg.</param>
/// <param name="Part">How it burns at less than all; null for on or off.</param>
public sealed record HeaterEntry(
    string Id,
    string Name,
    double OutputW,
    double EfficiencyFraction,
    double FanW,
    bool Sealed,
    bool Electric,
    double ThrowM,
    double MassKg,
    PartFire? Part = null)
{
    /// <summary>How it burns.</summary>
    public HeaterFire Fire => Part is null ? HeaterFire.OnOff : Part.TwoStage ? HeaterFire.TwoStage : HeaterFire.Modulating;
}

/// <summary>How heaters burn.</summary>
public enum HeaterFire
{
    /// <summary>All or nothing.</summary>
    OnOff,

    /// <summary>Low or high fire.</summary>
    TwoStage,

    /// <summary>Anything from least to full fire.</summary>
    Modulating,
}

/// <summary>A burner at less than its full fire. Its fan runs as at full fire.</summary>
/// <param name="LeastFraction">Least fire it keeps lit, share of its output: one over its turndown, 0.05 to 0.95.</param>
/// <param name="LeastEfficiencyFraction">Output over gross fuel input there; between least and full fire it goes straight.</param>
/// <param name="TwoStage">True where it burns at least or full fire and nothing between.</param>
public sealed record PartFire(double LeastFraction, double LeastEfficiencyFraction, bool TwoStage)
{
    /// <summary>Efficiency at a fire.</summary>
    /// <param name="fireFraction">Share of the output; below the least, that of the least.</param>
    /// <param name="fullEfficiencyFraction">Efficiency at full fire.</param>
    /// <returns>Output over gross fuel input.</returns>
    public double EfficiencyAt(double fireFraction, double fullEfficiencyFraction)
    {
        double share = Math.Clamp((fireFraction - LeastFraction) / Math.Max(1 - LeastFraction, 0.05), 0, 1);
        return LeastEfficiencyFraction + (share * (fullEfficiencyFraction - LeastEfficiencyFraction));
    }
}

/// <summary>A curtain cloth with its drive.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="SolarTransmittanceFraction">Sun let through.</param>
/// <param name="SolarReflectanceFraction">Sun turned back.</param>
/// <param name="EmissivityFraction">Long-wave emissivity.</param>
/// <param name="OpennessFraction">Open area of the weave.</param>
/// <param name="TravelS">Open to drawn, s.</param>
/// <param name="DriveW">Drive, W.</param>
/// <param name="FlameSpread">Flame-spread class of the cloth, A best.</param>
public sealed record CurtainEntry(
    string Id,
    string Name,
    double SolarTransmittanceFraction,
    double SolarReflectanceFraction,
    double EmissivityFraction,
    double OpennessFraction,
    double TravelS,
    double DriveW,
    string FlameSpread);

/// <summary>A circulation fan.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="FlowM3PerS">Free-air flow, m³/s.</param>
/// <param name="PowerW">Power, W.</param>
/// <param name="MassKg">Mass, kg.</param>
public sealed record CirculationEntry(string Id, string Name, double DiameterM, double FlowM3PerS, double PowerW, double MassKg);

/// <summary>A fan whose head sweeps from side to side.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="FlowM3PerS">Free-air flow, m³/s.</param>
/// <param name="PowerW">Power, W.</param>
/// <param name="VoltageV">Voltage, V.</param>
/// <param name="SweepDeg">Whole arc it sweeps, degrees.</param>
/// <param name="MassKg">Mass, kg.</param>
public sealed record OscillatingEntry(
    string Id, string Name, double DiameterM, double FlowM3PerS, double PowerW, double VoltageV, double SweepDeg, double MassKg);

/// <summary>A filter fan.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="VoltageV">Voltage, V.</param>
/// <param name="FilterLossPa">Loss of the clean filter, Pa.</param>
/// <param name="FilterAtM3PerS">At this flow, m³/s.</param>
/// <param name="MassKg">Mass, kg.</param>
/// <param name="Points">Tested points without the filter.</param>
public sealed record PressureFanEntry(
    string Id,
    string Name,
    double DiameterM,
    double VoltageV,
    double FilterLossPa,
    double FilterAtM3PerS,
    double MassKg,
    EqList<Science.Flow.FanPoint> Points);

/// <summary>A lamp.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words.</param>
/// <param name="PowerW">Power, W.</param>
/// <param name="EfficacyUmolPerJ">Photons, µmol/J.</param>
/// <param name="MassKg">Mass, kg.</param>
public sealed record LampEntry(string Id, string Name, double PowerW, double EfficacyUmolPerJ, double MassKg);

/// <summary>Hot-water pipe.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="Name">In words, with water and air temperature.</param>
/// <param name="OutputWPerM">Heat, W/m.</param>
/// <param name="MassKgPerM">Mass with water, kg/m.</param>
public sealed record PipeEntry(string Id, string Name, double OutputWPerM, double MassKgPerM);
