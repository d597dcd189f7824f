using Glazewright.Design.Services;

namespace Glazewright.Published.Tests.Science;

/// <summary>NEC tables 430.248 and 430.250, full-load currents of motors. Read at second hand: a wire supplier's reprint of the 1999 edition and a later one, which agree.</summary>
public class MotorCurrentTables
{
    [Theory]
    [InlineData(0.5, 115, false, 9.8), InlineData(0.5, 230, false, 4.9), InlineData(1, 208, false, 8.8), InlineData(1.5, 240, false, 10), InlineData(3, 115, false, 34)]
    [InlineData(1.5, 208, true, 6.6), InlineData(0.75, 230, true, 3.2), InlineData(5, 480, true, 7.6), InlineData(10, 208, true, 30.8)]
    public void Full_load_current(double sizeHp, double voltageV, bool threePhase, double publishedA) =>
        Assert.Equal(publishedA, MotorTable.FullLoadA(sizeHp, voltageV, threePhase));

    // Practice: belt-driven greenhouse fans, 36 in 1/2 hp, 48 in 1 hp, 54 in 1-1/2 hp.
    [Theory]
    [InlineData(605, 0.5), InlineData(1200, 1), InlineData(1540, 1.5)]
    public void Usual_motor_sizes(double drawnW, double usualHp) => Assert.Equal(usualHp, MotorTable.SizeHp(drawnW, false));

    [Fact]
    public void Past_the_table_nothing_is_invented()
    {
        Assert.Null(MotorTable.SizeHp(20, false));
        Assert.Null(MotorTable.SizeHp(50_000, true));
        Assert.Null(MotorTable.FullLoadA(1, 400, true));
    }
}
