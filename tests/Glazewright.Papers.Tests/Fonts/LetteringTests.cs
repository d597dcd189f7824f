using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Tests.Fonts;

public class LetteringTests
{
    // The marks that drawings and reports use beyond plain ASCII; a font change that lost one would print boxes.
    private const string MarksUsed = "°′″½¼¾µ²³±×÷≤≥≈→–—−‘’“”…·•Ø√ηδΩ";

    [Theory]
    [InlineData(Face.Regular), InlineData(Face.SemiBold)]
    public void Every_mark_our_papers_use_is_in_the_font(Face face)
    {
        TrueTypeMetrics metrics = Lettering.Metrics(face);
        Assert.All(MarksUsed, c => Assert.True(metrics.Draws(c), $"U+{(int)c:X4} {c}"));
        Assert.All(Enumerable.Range(32, 95), c => Assert.True(metrics.Draws(c)));
        Assert.True(metrics.Draws(Lettering.Substitute));
    }

    [Fact]
    public void Digits_are_equally_wide_so_columns_line_up()
    {
        TrueTypeMetrics metrics = Lettering.Metrics(Face.Regular);
        Assert.Single("0123456789".Select(c => metrics.AdvanceEm(c)).Distinct());
        Assert.NotEqual(metrics.AdvanceEm('i'), metrics.AdvanceEm('W'));
    }

    [Fact]
    public void Width_grows_with_height_and_adds_up()
    {
        double one = Lettering.WidthMm("Ridge 16'-0\"", Face.Regular, 2.5);
        Assert.Equal(2 * one, Lettering.WidthMm("Ridge 16'-0\"", Face.Regular, 5), 1e-9);
        double parts = Lettering.WidthMm("Ridge ", Face.Regular, 2.5) + Lettering.WidthMm("16'-0\"", Face.Regular, 2.5);
        Assert.Equal(one, parts, 1e-9);
    }

    [Fact]
    public void Undrawable_characters_become_one_mark_and_control_marks_vanish()
    {
        Assert.Equal("Herb ? Yard", Lettering.Drawable("Herb 🌱🌿 Yard"));
        Assert.Equal("? ?", Lettering.Drawable("גן ירק"));
        Assert.Equal("ab c", Lettering.Drawable("a\u0007b\nc"));
        Assert.Equal("ab", Lettering.Drawable("a\u202Eb"));
    }

    [Fact]
    public void A_font_that_is_cut_short_is_refused()
    {
        byte[] whole = FontFiles.Bytes(Face.Regular);
        Assert.Throws<InvalidDataException>(() => TrueTypeMetrics.Read(whole[..300]));
        Assert.Throws<InvalidDataException>(() => TrueTypeMetrics.Read([]));
    }

    [Fact]
    public void Lines_fit_and_no_word_is_lost()
    {
        string text = "A wet wall that is too small for its fans carries water over " + new string('W', 90) + " end";
        IReadOnlyList<string> lines = TextWrap.Lines(text, Face.Regular, 2.5, 60);
        Assert.All(lines, l => Assert.True(Lettering.WidthMm(l, Face.Regular, 2.5) <= 60));
        Assert.Equal(text.Replace(" ", ""), string.Concat(lines).Replace(" ", ""));
        Assert.Equal([""], TextWrap.Lines("", Face.Regular, 2.5, 60));
    }

    [Fact]
    public void A_long_name_is_cut_with_an_ellipsis()
    {
        string cut = TextWrap.Fit(new string('n', 500), Face.SemiBold, 3.5, 80);
        Assert.EndsWith("…", cut);
        Assert.True(Lettering.WidthMm(cut, Face.SemiBold, 3.5) <= 80);
    }
}
