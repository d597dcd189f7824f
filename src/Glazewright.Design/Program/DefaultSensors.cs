using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>The sensors a program needs, as they are usually bought: aspirated where they measure air, no error, a second thermometer to serve when the first fails.</summary>
internal static class DefaultSensors
{
    public static EqList<Sensor> Of(string house, DefaultStages stages)
    {
        bool Has(ActuatorKind kind) => stages.OfKind(kind).Any();
        bool curtain = Has(ActuatorKind.Curtain) || Has(ActuatorKind.SecondCurtain);
        return new (Reading Reading, bool Wanted)[]
        {
            (Reading.InsideTemperature, true),
            (Reading.InsideHumidity, true),
            (Reading.SecondTemperature, true),
            (Reading.UpperTemperature, curtain),
            (Reading.OutsideTemperature, true),
            (Reading.OutsideHumidity, true),
            (Reading.Light, true),
            (Reading.Wind, true),
            (Reading.Snow, curtain),
            (Reading.Rain, Has(ActuatorKind.RoofVent) || Has(ActuatorKind.SideVent)),
            (Reading.Co2, Has(ActuatorKind.Co2Valve)),
            (Reading.StaticPressure, Has(ActuatorKind.Fan)),
            (Reading.LouverOpenProof, Has(ActuatorKind.Louver)),
        }.Where(x => x.Wanted).Select(x => SensorPoints.Usual(house, x.Reading)).ToEqList();
    }
}
