using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Boards;

/// <summary>
/// Drives the map one page looks at, away from the page's thread, a slice at a time. A newer question ends an older one within a
/// few steps; only the first slice of each is let finish, so that a moving hand sees it. The slices of all pages take turns.
/// </summary>
public sealed class MapDrive(Func<byte[], Task> show, Func<Exception, Task> fail) : IDisposable
{
    private static readonly SemaphoreSlim _turns = new(1);

    private readonly Lock _gate = new();
    private MapRun? _wanted;
    private DisplayUnits? _units;
    private CancellationTokenSource _slice = new();
    private bool _isStopped, _isResting, _isWorking, _isChanged, _isClosed;

    /// <summary>The words of the map as far as it is driven; null before the first.</summary>
    public MapWords? Words
    {
        get
        {
            lock (_gate) return _wanted is null ? null : new MapWords(_wanted, _units!);
        }
    }

    /// <summary>What the page looks at from now on.</summary>
    public void Ask(MapQuestion question, DisplayUnits units)
    {
        lock (_gate)
        {
            if (_wanted is { } run && run.Question.DrivesAs(question)) run.Question = question;
            else
            {
                // The slice under way is of no use any more, once its map has been seen.
                if (_wanted is { Driven: > 0 }) _slice.Cancel();
                (_wanted, _isStopped) = (new MapRun(question), false);
            }

            (_units, _isResting) = (units, false);
            Go();
        }
    }

    /// <summary>Stops where it is, or drives on.</summary>
    public void StopOrGo()
    {
        lock (_gate)
        {
            if (_wanted is null) return;
            _isStopped = !_isStopped;
            if (_isStopped) _slice.Cancel();
            Go();
        }
    }

    /// <summary>Nobody looks any more.</summary>
    public void Rest()
    {
        lock (_gate)
        {
            _isResting = true;
            _slice.Cancel();
        }
    }

    public void Dispose()
    {
        _isClosed = true;
        Rest();
    }

    private void Go()
    {
        _isChanged = true;
        if (_isWorking || _isClosed) return;
        _isWorking = true;
        _ = Task.Run(Work);
    }

    private async Task Work()
    {
        try
        {
            MapRun? driven = null;
            MapPace pace = new();
            Task seen = Task.CompletedTask;
            while (Next(out CancellationToken cancel) is { } run)
            {
                if (run != driven) (driven, pace) = (run, new());
                bool moved = !_isStopped && !run.IsDone && await Drive(run, pace, cancel);
                if (_isResting || !moved && run != _wanted) continue;

                // Driving does not wait for a page that still paints the piece before, except for the last.
                if (moved && !run.IsDone && !seen.IsCompleted) continue;
                await seen;
                seen = show(MapFrame.Of(run, _units!, pace.Left_s(run), _isStopped));
            }

            await seen;
        }
        catch (Exception exception)
        {
            lock (_gate) _isWorking = false;
            if (!_isClosed) await fail(exception);
        }
    }

    // What to do next; null, and the work ends, where nothing is left.
    private MapRun? Next(out CancellationToken cancel)
    {
        lock (_gate)
        {
            if (_slice.IsCancellationRequested) _slice = new();
            cancel = _slice.Token;
            _isWorking = !_isResting && _wanted is { } run && (_isChanged || !run.IsDone && !_isStopped);
            _isChanged = false;
            return _isWorking ? _wanted : null;
        }
    }

    // Whether its cells were driven; where it was cancelled they still are to be.
    private static async Task<bool> Drive(MapRun run, MapPace pace, CancellationToken cancel)
    {
        try
        {
            await _turns.WaitAsync(cancel);
            try
            {
                pace.Time(() => run.Advance(pace.Cells, cancel));
                return true;
            }
            finally
            {
                _turns.Release();
            }
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }
}
