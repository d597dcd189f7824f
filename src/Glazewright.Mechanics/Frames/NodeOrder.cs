namespace Glazewright.Mechanics.Frames;

/// <summary>An order of the joints that keeps the stiffness narrow. Cuthill and McKee (1969), reversed.</summary>
internal static class NodeOrder
{
    internal static int[] ReverseCuthillMcKee(FrameModel model)
    {
        int count = model.Nodes.Count;
        var neighbours = new SortedSet<int>[count];
        for (int i = 0; i < count; i++)
        {
            neighbours[i] = [];
        }

        foreach (FrameMember m in model.Members)
        {
            neighbours[m.Start].Add(m.End);
            neighbours[m.End].Add(m.Start);
        }

        var order = new List<int>(count);
        var seen = new bool[count];
        while (order.Count < count)
        {
            int start = -1;
            for (int i = 0; i < count; i++)
            {
                if (!seen[i] && (start < 0 || neighbours[i].Count < neighbours[start].Count))
                {
                    start = i;
                }
            }

            int read = order.Count;
            order.Add(start);
            seen[start] = true;
            while (read < order.Count)
            {
                int[] next = [.. neighbours[order[read++]].Where(n => !seen[n]).OrderBy(n => neighbours[n].Count).ThenBy(n => n)];
                foreach (int n in next)
                {
                    seen[n] = true;
                    order.Add(n);
                }
            }
        }

        order.Reverse();
        return [.. order];
    }
}
