using Analytics.Simulation.Clips.Camera;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Clips.Reading;

/// <summary>Somebody who steps through a clip and notes the first frame of an event; now and then one frame off, early or late alike.</summary>
/// <param name="SlipChance">Chance to be one frame off.</param>
public sealed record EventReader(double SlipChance)
{
    /// <summary>The frames read: first movement and contact.</summary>
    /// <exception cref="ArgumentException">The clip does not show both.</exception>
    public (int FirstMovement, int Contact) Read(Recording clip, RandomNumbers random)
    {
        var contact = clip.Run.ContactSeconds;
        if (clip.FrameOf(0) is not { } first || clip.FrameOf(contact) is not { } touch)
            throw new ArgumentException($"The clip ends at {clip.FrameSeconds[^1]} s, before contact at {contact} s.", nameof(clip));
        return (Slip(first, clip, random), Slip(touch, clip, random));
    }

    private int Slip(int frame, Recording clip, RandomNumbers random)
    {
        var draw = random.Uniform();
        var slip = draw < SlipChance / 2 ? -1 : draw < SlipChance ? 1 : 0;
        return Math.Clamp(frame + slip, 0, clip.FrameSeconds.Length - 1);
    }
}
