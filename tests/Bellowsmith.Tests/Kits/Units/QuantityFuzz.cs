using System.Globalization;
using Bellowsmith.Kits.Units;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Units;

[Trait("Kind", "Fuzz")]
public sealed class QuantityFuzz
{
    private static readonly Gen<(int Whole, string Fraction)> _number =
        Gen.Select(Gen.Int[-99_999, 99_999], Gen.Char["0123456789"].Array[0, 6], (whole, fraction) => (whole, new string(fraction)));

    [Fact]
    public void Read_NumberWithEitherMark_GivesTheNumberItself() =>
        Gen.Select(_number, Gen.Char[".,"], Gen.OneOf("", " ", "  ", "\u00a0", "\u202f", "\t")).Sample((number, mark, blank) =>
        {
            var mended = number.Fraction.Length == 0 ? "" : mark + number.Fraction;
            var text = number.Whole.ToString(CultureInfo.InvariantCulture) + mended + blank + "N";
            var expected = double.Parse($"{number.Whole}.{number.Fraction}0", CultureInfo.InvariantCulture);
            Assert.Equal(expected, Quantity.Read(text, Dimension.Force, out _)!.Value.Si);
        }, iter: 20_000);

    [Fact]
    public void Read_NumberWithGroups_IsRefused() =>
        Gen.Select(Gen.Int[1, 999], Gen.Int[0, 999], Gen.OneOf("1", "12,5", "12.5", "0"), Gen.OneOf(" ", "\u00a0", "'", "’", "_")).Sample(
            (thousands, rest, tail, group) =>
                Assert.Null(Quantity.Read(FormattableString.Invariant($"{thousands}{group}{rest:000}{tail} N"), Dimension.Force, out _)), iter: 5_000);

    [Fact]
    public void Read_AnyText_NeverThrows() =>
        Gen.OneOf(Gen.String, Gen.Char["0123456789.,eE+-− mNbar²°*/\u00a0"].Array[0, 12].Select(chars => new string(chars))).Sample(text =>
        {
            foreach (var dimension in Enum.GetValues<Dimension>())
            {
                var quantity = Quantity.Read(text, dimension, out var misreading);
                Assert.True(quantity is null == misreading is not null);
                Assert.True(quantity is null || double.IsFinite(quantity.Value.Si));
            }
        }, iter: 20_000);
}
