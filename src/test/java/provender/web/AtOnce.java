package provender.web;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/** Many callers side by side, as a server knows them. */
final class AtOnce {
  private static final int CALLERS = 8;

  private AtOnce() {}

  /** What each call found wrong; an empty text for nothing. */
  static List<String> wrongs(int calls, IntFunction<String> call) throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(CALLERS);
    try {
      List<Callable<String>> asked = new ArrayList<>();
      for (int i = 0; i < calls; i++) {
        int number = i;
        asked.add(() -> call.apply(number));
      }
      List<String> wrong = new ArrayList<>();
      for (Future<String> answer : callers.invokeAll(asked)) {
        if (!answer.get().isEmpty()) {
          wrong.add(answer.get());
        }
      }
      return wrong;
    } finally {
      callers.shutdownNow();
    }
  }
}
