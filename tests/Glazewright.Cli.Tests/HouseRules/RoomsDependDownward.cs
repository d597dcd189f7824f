namespace Glazewright.Cli.Tests.HouseRules;

public class RoomsDependDownward
{
    public static TheoryData<string> All => [.. Rooms.Names];

    [Theory]
    [MemberData(nameof(All))]
    public void A_room_uses_only_rooms_below_it(string room)
    {
        string[] ours = [.. Rooms.Load(room).GetReferencedAssemblies()
            .Select(a => a.Name!)
            .Where(n => n.StartsWith("Glazewright", StringComparison.OrdinalIgnoreCase))];
        Assert.Empty(ours.Except(Rooms.MayUse[room]));
    }

    [Fact]
    public void Heavy_parts_stay_out_of_the_lower_rooms()
    {
        foreach (string room in new[] { "Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Design" })
        {
            string[] used = [.. Rooms.Load(room).GetReferencedAssemblies().Select(a => a.Name!)];
            Assert.DoesNotContain(used, n => n.StartsWith("PdfSharp", StringComparison.OrdinalIgnoreCase));
            Assert.DoesNotContain(used, n => n.StartsWith("Google", StringComparison.OrdinalIgnoreCase));
        }
    }
}
