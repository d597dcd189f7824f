using Glazewright.Design.Program;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Year;

/// <summary>A failure put into a run: what the box reads, what the equipment does, what the weather brings. The base does nothing.</summary>
internal class Tamper
{
    /// <summary>Spoils readings before the box sees them.</summary>
    public virtual void Read(int minute, Span<int> readings)
    {
    }

    /// <summary>Spoils commands before the equipment gets them.</summary>
    public virtual void Command(int minute, Span<Command> commands)
    {
    }

    /// <summary>Changes the weather.</summary>
    public virtual void Weather(ref HouseForcing forcing)
    {
    }
}
