using System.Reflection;
using Bellowsmith.Kits;
using Bellowsmith.Physics;
using Bellowsmith.Quality;

namespace Bellowsmith.Tests.Architecture;

/// <summary>The word pressure never stands alone: gauge and absolute differ by a bar, and nobody sees it in a number.</summary>
public sealed class PressureNameTests
{
    private static readonly string[] _saysWhich = ["Gauge", "Absolute", "Ambient", "gauge", "absolute", "ambient"];

    // Not a value of a pressure: how many levels were tested, and yes-or-no against a limit or range that is gauge.
    private static readonly string[] _noValue = ["PressureLevels", "WithinPressureLimit", "WithinTestedPressure", "DependsOnGaugePressure"];

    [Theory]
    [InlineData(typeof(AirSpring))]
    [InlineData(typeof(Sample))]
    [InlineData(typeof(Kit))]
    public void Names_OfThePublicApi_SayWhichPressure(Type anyOf) => Assert.Empty(Names(anyOf.Assembly).Where(name =>
        name.Contains("pressure", StringComparison.OrdinalIgnoreCase)
        && !_saysWhich.Any(which => name.Contains(which, StringComparison.Ordinal))
        && !_noValue.Any(allowed => name.EndsWith(allowed, StringComparison.Ordinal))).Distinct());

    [Theory]
    [InlineData("AirSpringFit.PressureLevels")]
    [InlineData("HeightSolution.WithinPressureLimit")]
    public void Names_OfThePublicApi_AreAllSeen(string name) =>
        Assert.Contains(name, Names(typeof(AirSpring).Assembly).Concat(Names(typeof(Kit).Assembly)));

    private static IEnumerable<string> Names(Assembly assembly)
    {
        foreach (var type in assembly.GetExportedTypes())
        {
            yield return type.Name;
            foreach (var member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            {
                // Accessors and deconstructors repeat their property; a constructor is named after its type.
                var method = member as MethodBase;
                if (method is MethodInfo { IsSpecialName: true }) continue;
                if (method is not ConstructorInfo) yield return $"{type.Name}.{member.Name}";
                foreach (var parameter in method?.GetParameters() ?? []) yield return parameter.Name!;
            }
        }
    }
}
