package provender.web;

import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.ws.rs.sse.Sse;
import jakarta.ws.rs.sse.SseEventSink;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import provender.sync.TankKey;

/**
 * Tells listening phones how far a journal goes now. It is only a hint: whoever misses one finds out at their next pull. A
 * listener is let go after some minutes and asks anew, so that one who may no longer read does not listen on.
 */
@Singleton
class Hints {
  private static final Duration BEAT = Duration.ofSeconds(20);
  private static final Duration LONGEST = Duration.ofMinutes(10);
  private static final int MOST_LISTENERS = 200;

  private final Map<TankKey, List<Listener>> listeners = new ConcurrentHashMap<>();
  private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();

  Hints() {
    clock.scheduleWithFixedDelay(this::beat, BEAT.toSeconds(), BEAT.toSeconds(), TimeUnit.SECONDS);
  }

  private record Listener(SseEventSink sink, Sse sse, Instant since) {}

  void stop(@Observes ShutdownEvent stopping) {
    clock.shutdownNow();
  }

  void listen(TankKey tank, SseEventSink sink, Sse sse, long head) {
    List<Listener> here = listeners.computeIfAbsent(tank, key -> new CopyOnWriteArrayList<>());
    if (here.size() >= MOST_LISTENERS) {
      here.remove(0).sink().close();
    }
    Listener listener = new Listener(sink, sse, Instant.now());
    here.add(listener);
    send(tank, listener, head);
  }

  /** A batch was committed; the journal ends there now. */
  void committed(TankKey tank, long head) {
    for (Listener listener : listeners.getOrDefault(tank, List.of())) {
      send(tank, listener, head);
    }
  }

  private void send(TankKey tank, Listener listener, long head) {
    if (listener.sink().isClosed()) {
      drop(tank, listener);
      return;
    }
    String data = Json.hint(tank.tank(), head);
    listener.sink().send(listener.sse().newEvent(data)).exceptionally(gone -> {
      drop(tank, listener);
      return null;
    });
  }

  private void beat() {
    Instant now = Instant.now();
    listeners.forEach((tank, here) -> {
      for (Listener listener : new ArrayList<>(here)) {
        if (listener.sink().isClosed() || listener.since().plus(LONGEST).isBefore(now)) {
          drop(tank, listener);
        } else {
          listener.sink().send(listener.sse().newEventBuilder().comment("still here").build());
        }
      }
    });
  }

  private void drop(TankKey tank, Listener listener) {
    listeners.getOrDefault(tank, List.of()).remove(listener);
    listener.sink().close();
  }
}
