using System.Security.Claims;
using Glazewright.Web.Serving;

namespace Glazewright.Web.Tests.Serving;

/// <summary>Which sign-ins have ended.</summary>
public class SignInsTests
{
    [Fact]
    public void An_ended_sign_in_is_told_once_and_another_of_the_same_person_goes_on()
    {
        SignIns signIns = new();
        List<string> told = [];
        signIns.Ended += told.Add;
        (ClaimsPrincipal yard, ClaimsPrincipal office) = (Ann("1"), Ann("2"));
        signIns.End(yard);
        Assert.True(signIns.HasEnded(yard));
        Assert.False(signIns.HasEnded(office));
        Assert.Equal(["1"], told);

        // On this machine alone nobody signs in, and nobody out.
        signIns.End(new ClaimsPrincipal());
        Assert.False(signIns.HasEnded(new ClaimsPrincipal()));
        Assert.False(signIns.HasEnded(null));
        Assert.Equal(["1"], told);
    }

    private static ClaimsPrincipal Ann(string signIn) => new(new ClaimsIdentity([new Claim(ClaimTypes.Name, "ann"), new Claim(SignIns.ClaimType, signIn)], "cookie"));
}
