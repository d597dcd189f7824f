using Glazewright.Design.Contracts;
using Glazewright.Science.Maths;

namespace Glazewright.Design.Plant;

/// <summary>The climate equipment of one house. A system the house does not have is null.</summary>
/// <param name="House">House id.</param>
/// <param name="Exhaust">Exhaust fans and their intake.</param>
/// <param name="WetWall">Wet wall.</param>
/// <param name="Fog">Fog.</param>
/// <param name="Heat">Heaters.</param>
/// <param name="Curtain">Curtain.</param>
/// <param name="Circulation">Circulation fans.</param>
/// <param name="Pressure">Positive-pressure fan.</param>
/// <param name="Vents">Roof and side vents.</param>
/// <param name="LampW">Lamps, W electric; 0 for none.</param>
/// <param name="BenchPipeW">Hot-water pipe under the benches, W; 0 for none.</param>
/// <param name="Loads">Electric loads.</param>
/// <param name="Report">Figures and findings.</param>
/// <param name="Dehumidifier">Dehumidifier.</param>
/// <param name="Co2">Carbon dioxide dosing.</param>
/// <param name="LampUmolPerJ">Photons of the lamps that reach the crop, µmol for each J of their power.</param>
/// <param name="Oscillating">Oscillating fans over the crop.</param>
/// <param name="SecondCurtain">Second curtain where it moves by itself.</param>
public sealed record PlantResult(
    string House,
    Answer<ExhaustPlant>? Exhaust,
    Answer<WetWallPlant>? WetWall,
    Answer<FogPlant>? Fog,
    Answer<HeatPlant>? Heat,
    CurtainPlant? Curtain,
    CirculationPlant? Circulation,
    PressurePlant? Pressure,
    VentPlant? Vents,
    double LampW,
    double BenchPipeW,
    EqList<ElectricLoad> Loads,
    StageReport Report,
    DehumidifierPlant? Dehumidifier = null,
    Co2Plant? Co2 = null,
    double LampUmolPerJ = 0,
    OscillatingPlant? Oscillating = null,
    CurtainPlant? SecondCurtain = null)
{
    /// <summary>Upper fans above the curtain; null without any.</summary>
    public UpperFanPlant? Upper { get; init; }

    /// <summary>The fans at work on the design day: all, or as many as run while water runs; null without fans.</summary>
    public OperatingPoint? FansOnDesignDay => Exhaust?.Choice is { Wet.Count: > 0 } fans ? WetWall?.Choice.Running(fans.Wet) ?? fans.Wet[^1] : null;

    /// <summary>Insect cloth before intake and vents, m²; 0 for none.</summary>
    public double InsectClothM2 { get; init; }

    /// <summary>Power of one lamp, W electric.</summary>
    public double LampEachW { get; init; } = 320;

    /// <summary>Lamps that make up the power.</summary>
    public int LampCount => (int)Math.Ceiling(LampW / LampEachW - 1e-9);

    /// <summary>Heat of a metre of bench pipe, W/m.</summary>
    public double BenchPipeWPerM { get; init; } = 70;

    /// <summary>Length of the bench pipe, m.</summary>
    public double BenchPipeM => BenchPipeW / BenchPipeWPerM;
}

/// <summary>Exhaust fans in the order they come on, with what they move.</summary>
/// <param name="Fans">Fans in stage order.</param>
/// <param name="Dry">Operating points with 1, 2 … all fans on, air through the louver (and the dry pad when it is the only way in).</param>
/// <param name="Wet">The same with the pad running; equal to dry when there is no wet wall.</param>
/// <param name="LouverFreeM2">Free area of the intake louvers, m².</param>
/// <param name="LouverGrossM2">Frame size of the intake louvers, m².</param>
/// <param name="LouverTravelS">Time of the motor from shut to open, s.</param>
/// <param name="HouseSpeedMs">Air speed through the section with all fans on, m/s.</param>
/// <param name="FanFaceSpeedMs">Air speed at the fan faces, m/s.</param>
/// <param name="LouverCount">How many louvers were chosen; 0 where the job types their openings.</param>
/// <param name="LouverSizeM">Frame of one, square, m; 0 where typed.</param>
/// <param name="ByLouvers">All fans on, pad running, through only 1, 2 … of the louvers chosen: for walls that cannot take them all; empty where typed.</param>
public sealed record ExhaustPlant(
    EqList<FanUnit> Fans,
    EqList<OperatingPoint> Dry,
    EqList<OperatingPoint> Wet,
    double LouverFreeM2,
    double LouverGrossM2,
    double LouverTravelS,
    double HouseSpeedMs,
    double FanFaceSpeedMs,
    int LouverCount = 0,
    double LouverSizeM = 0,
    EqList<OperatingPoint>? ByLouvers = null);

/// <summary>One fan.</summary>
/// <param name="Id">Path id (<c>A/fan-1</c>).</param>
/// <param name="Entry">Catalogue id.</param>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="SizeM">Frame size, square, m.</param>
public sealed record FanUnit(string Id, string Entry, double DiameterM, double SizeM);

/// <summary>Where fan curve and system meet.</summary>
/// <param name="FansOn">How many fans run, in stage order.</param>
/// <param name="FlowM3PerS">Total flow, m³/s.</param>
/// <param name="StaticPa">Static pressure across the fans, Pa.</param>
/// <param name="PowerW">Electric power, W.</param>
public sealed record OperatingPoint(int FansOn, double FlowM3PerS, double StaticPa, double PowerW);

/// <summary>Wet wall.</summary>
/// <param name="Entry">Catalogue id.</param>
/// <param name="WidthM">Width, m.</param>
/// <param name="HeightM">Height, m.</param>
/// <param name="ThicknessM">Pad thickness, m.</param>
/// <param name="FaceSpeedMs">Air speed through the pad with the fans that run while water runs, m/s.</param>
/// <param name="Effectiveness">Saturation effectiveness at that speed.</param>
/// <param name="PumpFlowM3PerS">Water over the pad, m³/s.</param>
/// <param name="PumpW">Pump, W electric.</param>
/// <param name="SumpM3">Sump, m³.</param>
/// <param name="EvaporationKgPerS">Water evaporated on the design day, kg/s.</param>
/// <param name="BleedFraction">Bleed-off over evaporation.</param>
/// <param name="MostFans">Fans that may run while water runs, in stage order: more would draw air through the pad faster than it can take; null where all may.</param>
public sealed record WetWallPlant(
    string Entry,
    double WidthM,
    double HeightM,
    double ThicknessM,
    double FaceSpeedMs,
    double Effectiveness,
    double PumpFlowM3PerS,
    double PumpW,
    double SumpM3,
    double EvaporationKgPerS,
    double BleedFraction,
    int? MostFans = null)
{
    /// <summary>The fans that run while water runs: all of them, or as many as the pad serves.</summary>
    /// <param name="wet">Operating points with the pad running, 1 to all fans; at least one.</param>
    public OperatingPoint Running(EqList<OperatingPoint> wet)
    {
        ArgumentNullException.ThrowIfNull(wet);
        return wet[Math.Min(MostFans ?? wet.Count, wet.Count) - 1];
    }

    /// <summary>Effectiveness with other air, η = 1 − exp(−B u^−0.35), B from the pad's own point: a lower face speed wets better.</summary>
    /// <param name="flowFraction">Air over that of the fans that run while water runs.</param>
    /// <returns>Saturation effectiveness.</returns>
    public double EffectivenessAt(double flowFraction)
    {
        double b = -Elementary.Log(1 - Math.Clamp(Effectiveness, 0.01, 0.99)) * Elementary.Pow(Math.Max(FaceSpeedMs, 0.05), 0.35);
        return 1 - Elementary.Exp(-b * Elementary.Pow(Math.Max(FaceSpeedMs * flowFraction, 0.05), -0.35));
    }
}

/// <summary>Fog.</summary>
/// <param name="Entry">Catalogue id.</param>
/// <param name="Nozzles">Nozzles.</param>
/// <param name="KgPerS">Water sprayed, all nozzles on, kg/s.</param>
/// <param name="EvaporatedFraction">Share that evaporates before it falls.</param>
/// <param name="PressurePa">Line pressure, Pa.</param>
/// <param name="PumpW">Pump, W electric.</param>
/// <param name="Cooling">What it does on the hottest design day; null where it is there to moisten alone.</param>
public sealed record FogPlant(string Entry, int Nozzles, double KgPerS, double EvaporatedFraction, double PressurePa, double PumpW, FogCooling? Cooling = null)
{
    /// <summary>Nozzles on the line across the intake.</summary>
    public int IntakeNozzles => (int)Math.Round(Nozzles * (Cooling?.IntakeFraction ?? 0));
}

/// <summary>Fog on the hottest design day.</summary>
/// <param name="FansOn">Fans that run with it: more would draw in more hot air than its water can cool; 0 without fans.</param>
/// <param name="FlowM3PerS">Their air, m³/s.</param>
/// <param name="WaterKgPerS">Water that evaporates, kg/s.</param>
/// <param name="IntakeFraction">Share of it that evaporates as the air enters; the rest evenly along the house.</param>
/// <param name="HottestC">Hottest air on its way behind the fog at the intake, °C.</param>
/// <param name="DampestFraction">Dampest air on its way, relative humidity.</param>
/// <param name="WishC">What it is to stay below, °C.</param>
/// <param name="Reached">Whether it does.</param>
public sealed record FogCooling(
    int FansOn, double FlowM3PerS, double WaterKgPerS, double IntakeFraction, double HottestC, double DampestFraction, double WishC, bool Reached);

/// <summary>Heaters, lead first.</summary>
/// <param name="Heaters">Heaters in stage order.</param>
/// <param name="OneOutW">Output left, bench pipes included, when the largest heater or the boiler fails, W.</param>
/// <param name="OneOutHoldsC">Inside temperature that holds at the 99.6 % day, curtain drawn when there is one, °C.</param>
/// <param name="OneOutHoldsOpenC">The same with the curtain open (it can stick), °C.</param>
public sealed record HeatPlant(EqList<HeaterUnit> Heaters, double OneOutW, double OneOutHoldsC, double OneOutHoldsOpenC);

/// <summary>One heater.</summary>
/// <param name="Id">Path id (<c>A/heater-1</c>).</param>
/// <param name="Entry">Catalogue id.</param>
/// <param name="OutputW">Heat to the house, W.</param>
/// <param name="EfficiencyFraction">Output over gross fuel input; 1 for electric.</param>
/// <param name="FanW">Its own fan, W electric.</param>
/// <param name="Electric">True for electric resistance.</param>
/// <param name="SealedCombustion">Takes its air from outside.</param>
/// <param name="ThrowM">Throw, m.</param>
/// <param name="MassKg">Mass hung from the frame, kg.</param>
/// <param name="RatedW">Output by its plate, W; 0 for the output itself.</param>
public sealed record HeaterUnit(
    string Id,
    string Entry,
    double OutputW,
    double EfficiencyFraction,
    double FanW,
    bool Electric,
    bool SealedCombustion,
    double ThrowM,
    double MassKg,
    double RatedW = 0)
{
    /// <summary>How it burns at less than all; null for on or off.</summary>
    public Catalogues.PartFire? Part { get; init; }

    /// <summary>Heat of its least fire, W; all of it for on or off.</summary>
    public double LeastW => OutputW * (Part?.LeastFraction ?? 1);
}

/// <summary>Curtain.</summary>
/// <param name="Entry">Catalogue id.</param>
/// <param name="HeightM">Height of the cloth, m.</param>
/// <param name="AreaM2">Area drawn, m².</param>
/// <param name="SolarTransmittanceFraction">Sun let through.</param>
/// <param name="SolarReflectanceFraction">Sun turned back.</param>
/// <param name="EmissivityFraction">Long-wave emissivity, both sides.</param>
/// <param name="OpennessFraction">Open area of the weave.</param>
/// <param name="TravelS">Time from open to drawn, s.</param>
/// <param name="DriveW">Drive motor, W electric.</param>
/// <param name="Layers">Number of cloths that move together.</param>
/// <param name="Purpose">What it is there for.</param>
/// <param name="DarkFrom">A blackout is drawn from here; null for others.</param>
/// <param name="DarkTo">Until here.</param>
public sealed record CurtainPlant(
    string Entry,
    double HeightM,
    double AreaM2,
    double SolarTransmittanceFraction,
    double SolarReflectanceFraction,
    double EmissivityFraction,
    double OpennessFraction,
    double TravelS,
    double DriveW,
    int Layers,
    Brief.CurtainPurpose Purpose = Brief.CurtainPurpose.Energy,
    Brief.DayMark? DarkFrom = null,
    Brief.DayMark? DarkTo = null);

/// <summary>Upper fans in the gable, above the curtain, each with an inlet in the other gable.</summary>
/// <param name="Entry">Catalogue id of the fan.</param>
/// <param name="Count">How many; as many inlets.</param>
/// <param name="DiameterM">Diameter, m.</param>
/// <param name="SizeM">Frame, square, m.</param>
/// <param name="FlowEachM3PerS">What one moves through its inlet, m³/s.</param>
/// <param name="PowerEachW">Power each, W electric.</param>
/// <param name="NeededM3PerS">Air that keeps the space above a drawn shade within 8 K of outside on the hottest design day, m³/s.</param>
/// <param name="Inlet">Catalogue id of the inlet louver.</param>
/// <param name="InletSizeM">Its frame, square, m.</param>
/// <param name="InletMotorW">Its motor, W; it is wired to open with its fan.</param>
public sealed record UpperFanPlant(
    string Entry, int Count, double DiameterM, double SizeM, double FlowEachM3PerS, double PowerEachW, double NeededM3PerS,
    string Inlet, double InletSizeM, double InletMotorW)
{
    /// <summary>What all move, m³/s.</summary>
    public double FlowM3PerS => Count * FlowEachM3PerS;
}

/// <summary>Circulation fans.</summary>
/// <param name="Entry">Catalogue id.</param>
/// <param name="Count">How many, in a loop.</param>
/// <param name="FlowEachM3PerS">Flow each, m³/s.</param>
/// <param name="PowerEachW">Power each, W electric.</param>
/// <param name="SpacingM">Distance from one to the next along the loop, m.</param>
/// <param name="CropSpeedMs">Expected air speed at the crop, m/s.</param>
public sealed record CirculationPlant(
    string Entry, int Count, double FlowEachM3PerS, double PowerEachW, double SpacingM, double CropSpeedMs);

/// <summary>Oscillating fans over the crop.</summary>
/// <param name="Entry">Generic size.</param>
/// <param name="Count">How many.</param>
/// <param name="Needed">How many the floor takes: the larger of both counts.</param>
/// <param name="FlowEachM3PerS">Flow each, m³/s.</param>
/// <param name="PowerEachW">Power each, W electric.</param>
/// <param name="RadiusM">Radius reached at the wished peak, no longer than the house, m.</param>
/// <param name="CoveredEachM2">Floor one sweeps at that radius, m².</param>
/// <param name="EdgePeakMs">Speed there while the jet points there, m/s.</param>
/// <param name="EdgeMeanMs">Mean over the sweep there, m/s.</param>
/// <param name="NeededByPeak">How many for the wished peak all over the floor.</param>
/// <param name="NeededByMean">How many for the least mean over a sweep all over the floor.</param>
/// <param name="MeanRadiusM">Radius within which the mean over a sweep is the least wished, m.</param>
/// <param name="CoveredByMeanM2">Floor one sweeps at that radius, m².</param>
public sealed record OscillatingPlant(
    string Entry, int Count, int Needed, double FlowEachM3PerS, double PowerEachW, double RadiusM, double CoveredEachM2, double EdgePeakMs, double EdgeMeanMs,
    int NeededByPeak, int NeededByMean, double MeanRadiusM, double CoveredByMeanM2)
{
    /// <summary>Wished speed at the crop while the jet passes, m/s (common practice: 0.2 to 0.5).</summary>
    public const double PeakMs = 0.5;

    /// <summary>Least mean over a sweep, m/s.</summary>
    public const double MeanMs = 0.2;
}

/// <summary>Positive-pressure fan with filter: a mode of its own, off while exhaust runs.</summary>
/// <param name="Entry">Catalogue id.</param>
/// <param name="FlowM3PerS">Flow at the held pressure, m³/s.</param>
/// <param name="HeldPa">Pressure held in calm air, Pa.</param>
/// <param name="PowerW">Power, W electric.</param>
/// <param name="FailsAtWindMs">Wind at which the windward wall's pressure overcomes it, m/s.</param>
/// <param name="Fans">Filter fans side by side.</param>
public sealed record PressurePlant(string Entry, double FlowM3PerS, double HeldPa, double PowerW, double FailsAtWindMs, int Fans = 1);

/// <summary>A dehumidifier: takes water out of the house's air and leaves its heat there.</summary>
/// <param name="PowerW">Compressor and fan, W electric.</param>
/// <param name="WaterKgPerS">Water taken out at 20 °C and 80 %, kg/s.</param>
public sealed record DehumidifierPlant(double PowerW, double WaterKgPerS);

/// <summary>Carbon dioxide dosing in daylight.</summary>
/// <param name="TargetPpm">Level to hold while the house is shut, ppm.</param>
/// <param name="DoseKgPerS">Rate with the valve open, kg/s.</param>
public sealed record Co2Plant(double TargetPpm, double DoseKgPerS);

/// <summary>Roof and side vents.</summary>
/// <param name="RoofM2">Roof vent opening, m².</param>
/// <param name="SideM2">Side vent opening, m².</param>
/// <param name="TravelS">Time from shut to open, s.</param>
/// <param name="ScreenedFraction">Air that passes over that of the bare openings: an insect screen of their own size stands before them.</param>
public sealed record VentPlant(double RoofM2, double SideM2, double TravelS, double ScreenedFraction = 1)
{
    /// <summary>Bare roof opening that passes as much, m².</summary>
    public double PassingRoofM2 => ScreenedFraction * RoofM2;

    /// <summary>Bare side opening that passes as much, m².</summary>
    public double PassingSideM2 => ScreenedFraction * SideM2;
}

/// <summary>One line of the electric load list.</summary>
/// <param name="Id">Path id of the equipment.</param>
/// <param name="Label">What it is.</param>
/// <param name="Count">How many.</param>
/// <param name="RunningW">Running power each, W.</param>
/// <param name="VoltageV">Voltage, V.</param>
/// <param name="ThreePhase">Needs three phases.</param>
/// <param name="FullLoadA">Full-load current each, A.</param>
/// <param name="StartA">Starting current each, A.</param>
/// <param name="Backup">Stays on when the mains fail.</param>
public sealed record ElectricLoad(
    string Id, string Label, int Count, double RunningW, double VoltageV, bool ThreePhase, double FullLoadA, double StartA, bool Backup);
