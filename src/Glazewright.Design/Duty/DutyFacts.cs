using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>What Duty computed on the way, for its workings.</summary>
internal sealed record DutyFacts(
    DutyInput Input,
    BuildingForm Form,
    DutyResult Result,
    CropPeriod ColdCrop,
    CropPeriod HotCrop,
    CoolingHour Hour,
    double InwardFraction,
    double CropWm2,
    AirLoad Load,
    AirState Outside,
    AirState Inlet,
    FlowNeed Need,
    FactoredVentilation Rule,
    AirRun Run,
    AirState Night,
    double NightLatentWm2,
    AirState DryingNight,
    double AboveWPerK,
    double StoredW,
    WeatherYear Weather);
