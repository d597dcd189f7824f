using System.Reflection;
using Glazewright.Science.Climate;
using Xunit;

namespace Glazewright.Science.Tests.Climate;

/// <summary>No field is forgotten where a house is told something that is not a number.</summary>
public sealed class HouseForcingTests
{
    public static TheoryData<string> Fields => [.. typeof(HouseForcing).GetProperties().Where(p => p.PropertyType == typeof(double) && p.CanWrite).Select(p => p.Name)];

    [Theory]
    [MemberData(nameof(Fields))]
    public void WhatIsNotANumberIsSeenAndMended(string field)
    {
        object boxed = new HouseForcing { OutsideC = 3, OutsideHumidityRatio = 0.004 };
        PropertyInfo property = typeof(HouseForcing).GetProperty(field)!;
        Assert.True(((HouseForcing)boxed).AllNumbers);
        property.SetValue(boxed, double.NaN);
        var spoiled = (HouseForcing)boxed;
        Assert.False(spoiled.AllNumbers);
        HouseForcing mended = spoiled.Mended();
        Assert.True(mended.AllNumbers);
        property.SetValue(boxed, property.GetValue(mended));
        Assert.Equal(boxed, mended); // nothing else is touched
    }
}
