package provender.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provender.people.PeopleStore.Account;

class PasswordsTest {
  private static final int COST_AND_KIND = "$2a$10$".length();

  @Test
  void a_name_that_nobody_has_is_checked_with_the_same_work_as_a_wrong_password() {
    String somebodys = Passwords.hash("a lamp in the pump room");
    assertThat(Passwords.NOBODYS_HASH.substring(0, COST_AND_KIND)).isEqualTo(somebodys.substring(0, COST_AND_KIND)).isEqualTo("$2a$10$");
    assertThat(Passwords.matches("anything", null)).isFalse();
    assertThat(Passwords.matches("a lamp in the pump room", new Account(new Keeper("id", "name"), somebodys))).isTrue();
  }

  @Test
  void what_goes_beyond_the_hash_s_own_length_counts_too() {
    String long72 = "x".repeat(72);
    Account account = new Account(new Keeper("id", "name"), Passwords.hash(long72 + "y"));
    assertThat(Passwords.matches(long72 + "y", account)).isTrue();
    assertThat(Passwords.matches(long72 + "z", account)).isFalse();
    assertThat(Passwords.matches(long72, account)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"short", "passwordpassword", "aaaaaaaaaaaaaaaa", "123456789012", "qwertyuiop[]", "p@ssw0rd2026", "baseball2026", "provenderprovender", "abcabcabcabc", "Harbour Desk of Quay"})
  void what_anyone_would_try_is_refused(String password) {
    assertThat(Passwords.fault(password, "harbour desk of quay")).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a lamp in the pump room", "Vier nasse Handschuhe am Haken", "кормление рыб в полдень", "魚に餌をやる時間は正午ですよ"})
  void sentences_in_any_script_without_digits_or_signs_are_taken(String password) {
    assertThat(Passwords.fault(password, "Teo")).isEmpty();
  }
}
