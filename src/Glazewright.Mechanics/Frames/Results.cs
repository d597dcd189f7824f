namespace Glazewright.Mechanics.Frames;

/// <summary>Turns raw numbers into results of the frame as it was given.</summary>
internal static class Results
{
    internal static FrameSolution Of(FrameModel model, Refinement refinement, SystemResult raw)
    {
        var movements = new JointMovement[model.Nodes.Count];
        for (int n = 0; n < movements.Length; n++)
        {
            movements[n] = new JointMovement(raw.Movement[3 * n], raw.Movement[3 * n + 1], raw.Movement[3 * n + 2]);
        }

        var reactions = new JointReaction[model.Supports.Count];
        for (int s = 0; s < reactions.Length; s++)
        {
            FrameSupport support = model.Supports[s];
            int n = 3 * support.Node;
            reactions[s] = new JointReaction(
                support.Node, support.HoldsX ? raw.Given[n] : 0, support.HoldsY ? raw.Given[n + 1] : 0,
                support.HoldsRotation ? raw.Given[n + 2] : 0);
        }

        var members = new MemberResult[model.Members.Count];
        for (int m = 0; m < members.Length; m++)
        {
            members[m] = Member(model, refinement, raw, m);
        }

        return new FrameSolution(movements, reactions, members);
    }

    private static MemberResult Member(FrameModel model, Refinement refinement, SystemResult raw, int m)
    {
        double lengthM = model.LengthM(m);
        double pieceM = lengthM / refinement.Pieces;
        double rigidityNM2 = model.Members[m].ElasticPa * model.Members[m].InertiaM4;
        var parts = new List<DiagramPart>();
        int first = m * refinement.Pieces;
        for (int p = 0; p < refinement.Pieces; p++)
        {
            double[] u = raw.LocalMovement[first + p];
            parts.AddRange(DiagramBuilder.Parts(
                p * pieceM, pieceM, rigidityNM2, raw.EndForces[first + p], raw.Loads[first + p], u[1], u[4]));
        }

        double[] start = raw.EndForces[first];
        double[] end = raw.EndForces[first + refinement.Pieces - 1];
        return new MemberResult(lengthM, new MemberEndForces(start[0], start[1], start[2], end[3], end[4], end[5]), [.. parts]);
    }
}
