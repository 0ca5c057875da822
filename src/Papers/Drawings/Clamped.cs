using Calx.Papers.Drawings.Parts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A stand with what its clamp holds, and with what is under that on its base.</summary>
internal static class Clamped
{
    private const double Alone = 16;
    private const double OverVessel = 16;
    private const double IntoVessel = 14;
    private const double OverBurner = 56;
    private const double OverSpirit = 42;
    private const double Usual = 150;

    /// <summary>The stand with all that it carries, what it holds in the middle.</summary>
    public static Cluster By(DrawnPart clamp, DrawnPart? on)
    {
        DrawnPart? held = clamp.Other(DrawnPlace.Holds);
        DrawnPart? under = clamp.Other(DrawnPlace.Under);
        bool heats = under?.Kind is Apparatus.Burner or Apparatus.SpiritBurner or Apparatus.Heat;
        double room = Room(held, under, heats);
        (double grip, double half) = Grip(held?.Kind);
        PartShape jaws = held?.Kind == Apparatus.ReductionTube ? Clamp.Across(Clamp.Base + room + ReductionTube.AxisAbove)
            : Clamp.Around(held is null ? Usual + room : Clamp.Base + room + grip, half);
        Cluster stand = Cluster.Of(clamp, jaws, on);
        Cluster above = held is null ? Cluster.Empty : Arrangement.Standing(held, clamp).Moved(0, Clamp.Base + room);
        Cluster beneath = under is null ? Cluster.Empty
            : heats ? Source.Under(above, under, clamp, Clamp.Base)
            : Arrangement.Standing(under, clamp, room).Moved(0, Clamp.Base);
        return stand.With(above).With(beneath);
    }

    /// <summary>From the base to the foot of what is held, in mm: a stem dips into the vessel below, all else stays clear of it.</summary>
    private static double Room(DrawnPart? held, DrawnPart? under, bool heats)
    {
        if (held?.Kind == Apparatus.ReductionTube && under is null)
        {
            return Burner.Height + OverBurner; // As high as it was over the burner that has been taken away.
        }

        if (under is null)
        {
            return OverVessel;
        }

        if (heats)
        {
            return under.Kind switch
            {
                Apparatus.Heat => Heat.Length + OverVessel,
                Apparatus.SpiritBurner => SpiritBurner.Wick + OverSpirit,
                _ => Burner.Height + OverBurner,
            };
        }

        bool dips = held?.Kind == Apparatus.Filter && under.Others(DrawnPlace.On).Count == 0;
        return Arrangement.Standing(under, on: null).Height + (dips ? -IntoVessel : OverVessel);
    }

    /// <summary>Where the clamp grips, and half the width there.</summary>
    private static (double Grip, double Half) Grip(Apparatus? held) => held switch
    {
        Apparatus.Tube => (Tube.Grip, Tube.Half),
        Apparatus.Flask => (Flask.Grip, Flask.Neck),
        Apparatus.Filter => (Filter.Grip, Filter.Stem),
        Apparatus.Can => (Can.Grip, Can.Half),
        _ => (0, Alone),
    };
}
