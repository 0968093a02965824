namespace Bellowsmith.Physics.Dyno;

/// <summary>
/// The values that never fall and lie nearest the given ones by weighted least squares: neighbours that fall are put together
/// at their mean until none does [Barlow Bartholomew Bremner Brunk 1972].
/// </summary>
internal static class Rising
{
    public static double[] Of(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        List<(double Value, double Weight, int Count)> blocks = [];
        for (int i = 0; i < values.Length; i++)
        {
            blocks.Add((values[i], weights[i], 1));
            while (blocks.Count > 1 && blocks[^1].Value < blocks[^2].Value)
            {
                var (upper, lower) = (blocks[^1], blocks[^2]);
                double weight = upper.Weight + lower.Weight;
                blocks.RemoveRange(blocks.Count - 2, 2);
                blocks.Add(((upper.Value * upper.Weight + lower.Value * lower.Weight) / weight, weight, upper.Count + lower.Count));
            }
        }

        return [.. blocks.SelectMany(block => Enumerable.Repeat(block.Value, block.Count))];
    }
}
