using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>What a cloth came off with, and what was cleaned and lubricated since.</summary>
internal sealed class TraceFacts
{
    private bool topWasOily;

    internal TraceFacts(IEnumerable<EventAtTurns> moments)
    {
        foreach (EventAtTurns moment in moments)
        {
            switch (moment.Happened)
            {
                case WipeReading wipe:
                    Wiped(wipe);
                    break;
                case CleanAction clean:
                    Cleaned(clean.Place);
                    break;
                case LubricateAction given:
                    Lubricant += Si.Volume.ToSi(given.Volume);
                    break;
                default:
                    break;
            }
        }
    }

    internal bool RollerWiped { get; private set; }

    internal bool OilOnRoller { get; private set; }

    internal bool DustOnRoller { get; private set; }

    internal bool OilOnTop { get; private set; }

    /// <summary>Whether an oily top was cleaned, and no cloth has told since that it is dry.</summary>
    internal bool TopNotWipedSince { get; private set; }

    /// <summary>Whether the top of the belt was oily at this visit, and a cloth has come off it dry since.</summary>
    internal bool TopDriedUp => !OilOnTop && !TopNotWipedSince && topWasOily;

    internal bool OilUnderneath { get; private set; }

    /// <summary>Lubricant given since the deck was last cleaned in this visit [m3].</summary>
    internal double Lubricant { get; private set; }

    private void Wiped(WipeReading wipe)
    {
        // Under the foot a thin film belongs; on the roller and on top it is lubricant where none may be.
        bool oil = wipe.Trace == WipedTrace.Oil;
        bool film = wipe.Trace == WipedTrace.Film;
        switch (wipe.Place)
        {
            case WipedPlace.DriveRoller:
                RollerWiped = true;
                OilOnRoller = oil || film;
                DustOnRoller = wipe.Trace == WipedTrace.Dust;
                break;
            case WipedPlace.BeltTop:
                OilOnTop = oil || film;
                topWasOily = topWasOily || OilOnTop;
                TopNotWipedSince = false;
                break;
            default:
                OilUnderneath = oil;
                break;
        }
    }

    private void Cleaned(CleanedPlace place)
    {
        switch (place)
        {
            case CleanedPlace.Rollers:
                OilOnRoller = DustOnRoller = false;
                break;
            case CleanedPlace.BeltTop:
                TopNotWipedSince = TopNotWipedSince || OilOnTop;
                OilOnTop = false;
                break;
            default:
                OilUnderneath = false;
                Lubricant = 0;
                break;
        }
    }
}
