namespace Glazewright.Design.Program;

/// <summary>Why an actuator is where it is. The three numbers of a command mean what stands here; <see cref="ProgramWords"/> words them.</summary>
public enum ReasonCode
{
    /// <summary>Nothing asks for it.</summary>
    Idle,

    /// <summary>A cooling stage: 0.01 K above the cooling threshold, s past it, stage number from 1.</summary>
    Cooling,

    /// <summary>A heating stage: 0.01 K below the heating threshold, s past it, stage number from 1.</summary>
    Heating,

    /// <summary>Drying: humidity 0.1 %, where it started 0.1 %, outside vapour over inside 0.1 %.</summary>
    Drying,

    /// <summary>Humidifying: humidity 0.1 %, where it started 0.1 %, ceiling 0.1 %.</summary>
    Fogging,

    /// <summary>Curtain drawn for warmth: light W/m², outside 0.01 °C, gap 0 to 10 000.</summary>
    CurtainForWarmth,

    /// <summary>Curtain drawn for shade: light W/m², 0.01 K above the cooling threshold, 0.</summary>
    CurtainForShade,

    /// <summary>Drawn curtain opened to let heat go: 0.01 K past the cooling threshold, how far it is open and at most is, 0 to 10 000.</summary>
    CurtainLetsHeatGo,

    /// <summary>Drying in turns with heat: humidity 0.1 %, where it started 0.1 %, outside vapour over inside 0.1 %.</summary>
    Purging,

    /// <summary>Curtain held open for snow.</summary>
    CurtainForSnow,

    /// <summary>Curtain opening in steps: where it stands now, 0 to 10 000, step, s to the next.</summary>
    CurtainInSteps,

    /// <summary>Lamps make up the photoperiod: min since the window began, light W/m², window min.</summary>
    Photoperiod,

    /// <summary>Runs when nothing else asks.</summary>
    Background,

    /// <summary>Kept on by its least time on: s on, s least, 0.</summary>
    LeastTimeOn,

    /// <summary>Kept off by its least time off: s off, s least, 0.</summary>
    LeastTimeOff,

    /// <summary>Forbidden by another that is asked for: that actuator's number, 0, 0.</summary>
    NotWith,

    /// <summary>Waits until another has stopped: that actuator's number, 0, 0.</summary>
    WaitsFor,

    /// <summary>What it needs is not on: one needed actuator's number, its level, 0.</summary>
    Needs,

    /// <summary>Kept on because another that needs it still runs: that actuator's number, 0, 0.</summary>
    NeededBy,

    /// <summary>The louver is not proved open: fans allowed without proof, 0, 0.</summary>
    NoLouverProof,

    /// <summary>Stopped: louver not proved and static pressure high: pressure 0.1 Pa, limit 0.1 Pa, s to go.</summary>
    LouverFault,

    /// <summary>Fog stopped near saturation: humidity 0.1 %, ceiling 0.1 %, 0.</summary>
    NearSaturation,

    /// <summary>Fog stopped, humidity unknown.</summary>
    HumidityUnknown,

    /// <summary>No temperature inside: by outside air 0.01 °C, light W/m², 0; <see cref="int.MinValue"/> where that is missing too.</summary>
    Blind,

    /// <summary>By hand: level 0 to 10 000.</summary>
    Hand,

    /// <summary>No water on the wet wall in the cold: outside 0.01 °C, limit 0.01 °C, 0.</summary>
    TooColdForWater,

    /// <summary>Carbon dioxide dosed: level ppm, target ppm, light W/m².</summary>
    Dosing,

    /// <summary>Curtain drawn to darken: minute of the day, minute it ends, gap 0 to 10 000.</summary>
    CurtainForDark,

    /// <summary>Upper fans: air above the curtain over outside 0.01 K, over the cooling threshold 0.01 K, curtain told 0 to 10 000.</summary>
    UpperAir,

    /// <summary>Only so many may run with another: that actuator's number, how many, 0.</summary>
    OnlySoMany,

    /// <summary>Wind keeps a vent from opening farther: the wind that counts 0.01 m/s or <see cref="int.MinValue"/> where unknown, how far it may, s to go.</summary>
    Wind,

    /// <summary>Rain keeps a vent from opening farther: 0, how far it may, s to go.</summary>
    Rain,

    /// <summary>No water on the wet wall in damp air: outside humidity 0.1 %, limit 0.1 %, 0.</summary>
    TooDampForWater,
}
