/* One string in, one string out: the verdict, the refusal, the truncation, and mangled text that must not do harm. */

#include "check.h"
#include "coldloop.h"

#include <stdlib.h>
#include <string.h>

/* Common practice, no source: a worn compressor shows a high low side and a low high side, and the vent stays warm. */
static const char *worn =
    "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"74 °F\", \"altitude\": \"0 m\"},"
    " \"readings\": {\"low_side\": \"70 psig\", \"high_side\": \"125 psig\", \"vent\": \"63 °F\"}}";

static char answer[COLDLOOP_ANSWER_MAX];

static void a_verdict_comes_back_as_json(void)
{
    size_t length = 0;
    CHECK(coldloop_diagnose(worn, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(answer) && length > 100);
    CHECK(strncmp(answer, "{\"verdict\":", 11) == 0);
    CHECK(strstr(answer, "worn-compressor") != NULL);
}

static void the_report_for_people_says_the_same(void)
{
    size_t length = 0;
    CHECK(coldloop_report(worn, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(answer) && strstr(answer, "DO FIRST") != NULL && strstr(answer, "WORN COMPRESSOR") != NULL);
    CHECK(strstr(answer, "psi") != NULL); /* in the units in which the readings were written */
    CHECK(coldloop_report("{}", answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(strstr(answer, "\"refused\"") != NULL);
}

static void the_page_is_one_html_document(void)
{
    size_t length = 0;
    CHECK(coldloop_page_html(worn, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(answer) && strncmp(answer, "<!DOCTYPE html>", 15) == 0);
    CHECK(strstr(answer, "<svg") != NULL && strstr(answer, "<script") == NULL && strstr(answer, "psig") != NULL);
    CHECK(coldloop_page_html("{}", answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(strstr(answer, "\"refused\"") != NULL);
}

static void each_drawing_stands_by_itself(void)
{
    size_t length = 0;
    CHECK(coldloop_picture_svg(worn, COLDLOOP_PICTURE_CYCLE, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(answer) && strncmp(answer, "<svg xmlns=", 11) == 0 && strstr(answer, "</svg>") != NULL);
    CHECK(coldloop_picture_svg(worn, COLDLOOP_PICTURE_HOLD, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == 0 && answer[0] == '\0'); /* the readings contain no vacuum hold */
    CHECK(coldloop_picture_svg(worn, 99, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(coldloop_picture_svg("{}", COLDLOOP_PICTURE_ODDS, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(strstr(answer, "\"refused\"") != NULL);
}

static void a_plan_says_what_to_do_first(void)
{
    size_t length = 0;
    CHECK(coldloop_plan(worn, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(answer) && strncmp(answer, "{\"expected_minutes\":", 20) == 0);
    CHECK(strstr(answer, "\"branches\"") != NULL);
    CHECK(coldloop_plan("{}", answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_MISSING);
}

/* The same readings as a readings file, with what was done since. */
static const char *toml =
    "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n"
    "[conditions]\nambient = '74 °F'\naltitude = '0 m'\n"
    "[readings]\nlow_side = '70 psig'\nhigh_side = '125 psig'\nvent = '63 °F'\n";

static void a_readings_file_is_answered_as_its_json(void)
{
    static char from_json[sizeof answer];
    CHECK(coldloop_diagnose(worn, from_json, sizeof from_json, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_diagnose(toml, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strcmp(answer, from_json) == 0);
}

static void settings_reach_the_verdict(void)
{
    char judged[1024];
    strcpy(judged, toml);
    strcat(judged, "[settings]\npriors.worn-compressor = 0\n");
    CHECK(coldloop_diagnose(judged, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "\"fault\":\"worn-compressor\",\"probability\":0.0,") != NULL);
    strcat(judged, "named = 70\n");
    CHECK(coldloop_diagnose(judged, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(strstr(answer, "settings.named") != NULL);
}

static void what_was_done_is_judged(void)
{
    char done[1024];
    strcpy(done, toml);
    strcat(done, "[evacuation]\nreached = '420 micron'\n");
    CHECK(coldloop_prove(done, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "\"evacuation\":{\"finding\":\"deep\"") != NULL && strstr(answer, "\"repair\":null") != NULL);
    CHECK(coldloop_diagnose(done, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "\"proof\":{") != NULL);
}

static void confirmed_cases_are_counted(void)
{
    char counts[4096], readings[1024];
    size_t length = 0;
    strcpy(readings, toml);
    strcat(readings, "[observations]\nhub_turns_freely = true\n");
    CHECK(coldloop_record("", readings, COLDLOOP_FAULT_WORN_COMPRESSOR, counts, sizeof counts, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(counts) && strstr(counts, "worn-compressor = 1") != NULL);
    /* The system of the readings is counted too: one with a valve has no orifice tube. */
    CHECK(strstr(counts, "[unable]") != NULL && strstr(counts, "orifice-restricted = 1") != NULL);
    CHECK(strstr(counts, "hub_turns_freely = [1, 0]") != NULL);
    CHECK(coldloop_record(counts, toml, 0, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "none-of-these = 1") != NULL);
    CHECK(coldloop_record("", readings, 999, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(coldloop_record("cases = 3", readings, 0, answer, sizeof answer, NULL, NULL) != COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "\"refused\"") != NULL);
}

static const char *confirmed =
    "{\"case\": {\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
    " \"readings\": {\"low_side\": \"70 psig\", \"high_side\": \"125 psig\", \"vent\": \"63 degF\"}},"
    " \"truth\": [{\"fault\": \"worn-compressor\"}], \"group\": \"van\"}\n"
    "{\"case\": {}, \"truth\": []}\n";

static void answers_to_confirmed_cases_are_evaluated(void)
{
    size_t length = 0;
    char one[1024];
    CHECK(coldloop_evaluate(confirmed, "", 0, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length == strlen(answer));
    CHECK(strncmp(answer, "{\"cases\":1,\"refused\":1,\"groups\":1,\"first_right\":{\"value\":1.0,\"low\":null", 70) == 0);
    CHECK(strstr(answer, "\"refusals\":[{\"line\":2,") != NULL);
    CHECK(coldloop_evaluate(confirmed, "{\"named\": 0.9}", 1, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_evaluate(confirmed, "", 2, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_evaluate("", "", 1, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(coldloop_evaluate(confirmed, "{\"named\": 9}", 0, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(strstr(answer, "\"refused\":{\"key\":\"named\"") != NULL);
    CHECK(coldloop_evaluate(NULL, "", 0, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    /* Nothing is learned from a text with a case that cannot be read, not even from its other cases. */
    CHECK(coldloop_learn("", confirmed, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(strstr(answer, "\"line\":2") != NULL);
    strcpy(one, confirmed);
    strchr(one, '\n')[0] = '\0';
    CHECK(coldloop_learn("[cases]\nworn-compressor = 2\n", one, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "worn-compressor = 3") != NULL);
}

static void a_refusal_says_what_to_write(void)
{
    size_t length = 0;
    coldloop_error error;
    char bare[512];
    error.size = sizeof error;
    strcpy(bare, worn);
    memcpy(strstr(bare, "70 psig"), "70 psi\"", 7);
    *(strstr(bare, "70 psi\"") + 7) = ' ';
    CHECK(coldloop_diagnose(bare, answer, sizeof answer, &length, &error) == COLDLOOP_STATUS_MISSING_DATUM);
    CHECK(error.status == COLDLOOP_STATUS_MISSING_DATUM);
    CHECK(length == strlen(answer));
    CHECK(strstr(answer, "\"refused\"") != NULL && strstr(answer, "readings.low_side") != NULL);
    CHECK(strstr(answer, "psig") != NULL);
}

static void a_catalogue_says_what_can_be_asked(void)
{
    const char *orifice = "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"orifice-tube\","
                          " \"compressor\": \"electric\"}}";
    CHECK(coldloop_catalogue(orifice, answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(answer, "orifice-restricted") != NULL && strstr(answer, "expansion-valve-stuck-open") == NULL);
    CHECK(strstr(answer, "\"high-voltage\"") != NULL && strstr(answer, "turn-hub") == NULL);
    CHECK(coldloop_catalogue("{}", answer, sizeof answer, NULL, NULL) == COLDLOOP_STATUS_MISSING);
}

static void a_buffer_that_is_too_short_gets_the_length(void)
{
    size_t whole = 0, cut = 0;
    char small[16];
    CHECK(coldloop_diagnose(worn, NULL, 0, &whole, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_diagnose(worn, small, sizeof small, &cut, NULL) == COLDLOOP_STATUS_OK);
    CHECK(whole == cut && whole > sizeof small);
    CHECK(strlen(small) == sizeof small - 1);
    CHECK(coldloop_diagnose(worn, answer, whole + 1, &cut, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strlen(answer) == whole && strncmp(answer, small, sizeof small - 1) == 0);
}

static void an_input_that_is_not_text_leaves_an_empty_answer(void)
{
    size_t length = 99;
    answer[0] = 'x';
    CHECK(coldloop_diagnose(NULL, answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(length == 0 && answer[0] == '\0');
    CHECK(coldloop_diagnose("\xff", answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_NOT_UTF8);
    CHECK(length == 0 && answer[0] == '\0');
    CHECK(coldloop_diagnose("", answer, sizeof answer, NULL, NULL) != COLDLOOP_STATUS_OK);
    CHECK(coldloop_diagnose("{}", answer, sizeof answer, NULL, NULL) != COLDLOOP_STATUS_OK);
}

/* Bytes of a valid case are overwritten, doubled or dropped: the result is an answer or a refusal, never a caught panic. */
static void mangled_text_does_no_harm(void)
{
    const size_t size = strlen(worn);
    int harmed = 0;
    srand(2026);
    for (int round = 0; round < 3000; round++) {
        char text[1024];
        uint32_t status;
        strcpy(text, worn);
        for (int change = rand() % 4; change >= 0; change--) {
            const size_t at = (size_t)rand() % size, from = (size_t)rand() % size;
            if (rand() % 2)
                text[at] = (char)(rand() % 127 + 1);
            else
                memmove(text + at, worn + from, size - (from > at ? from : at));
        }
        status = coldloop_diagnose(text, answer, sizeof answer, NULL, NULL);
        if ((status == COLDLOOP_STATUS_INTERNAL || answer[0] != '{') && status != COLDLOOP_STATUS_NOT_UTF8 && harmed++ < 5)
            printf("status %lu, answer %.40s, for %s\n", (unsigned long)status, answer, text);
    }
    CHECK(harmed == 0);
}

int main(void)
{
    a_verdict_comes_back_as_json();
    the_report_for_people_says_the_same();
    the_page_is_one_html_document();
    each_drawing_stands_by_itself();
    a_plan_says_what_to_do_first();
    a_readings_file_is_answered_as_its_json();
    settings_reach_the_verdict();
    what_was_done_is_judged();
    confirmed_cases_are_counted();
    answers_to_confirmed_cases_are_evaluated();
    a_refusal_says_what_to_write();
    a_catalogue_says_what_can_be_asked();
    a_buffer_that_is_too_short_gets_the_length();
    an_input_that_is_not_text_leaves_an_empty_answer();
    mangled_text_does_no_harm();
    return checks_end();
}
