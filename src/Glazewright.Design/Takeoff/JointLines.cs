using Glazewright.Design.Framing;

namespace Glazewright.Design.Takeoff;

/// <summary>How joints and bracing are bought: item and words, the same in lists, on drawings and in the building model.</summary>
public static class JointLines
{
    /// <summary>Words of a rod-braced bay.</summary>
    public const string Bracing = "Rod bracing, two bays a side in walls and roof (not designed)";

    /// <summary>Item and words of a joint.</summary>
    /// <param name="kind">What kind of joint.</param>
    /// <returns>Price-book item id and label.</returns>
    public static (string Item, string Label) Of(JointKind kind) => kind switch
    {
        JointKind.Ridge or JointKind.Eave or JointKind.Tie => (LineItems.Knee, "Eave, ridge and tie connection, plates and bolts (not designed)"),
        JointKind.Clip => (LineItems.Clip, "Purlin and girt clip with screws"),
        JointKind.Base => (LineItems.Base, "Base plate with anchor bolts (not designed)"),
        _ => (LineItems.OpeningJoint, "Joint of header, sill, jamb or post end, clip and screws (not designed)"),
    };
}
